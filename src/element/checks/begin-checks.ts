import { readChecks } from '../../plan/checks/read-checks.js';
import type { ChecksRequest } from '../../plan/checks/wishes.js';
import type { Outcome } from '../../problem.js';
import type { ConcretePage } from '../concrete/concrete-panel.js';
import { givenRequest } from '../concrete/given-request.js';

/** What a page tells of the runner; no plan is made of its answers, which the panel reads by itself. */
export function beginChecks({ given }: ConcretePage): Outcome<ChecksRequest> {
  const wanted = givenRequest('checks', given);
  if (!wanted.ok) return wanted;
  const read = readChecks(wanted.value);
  return read.ok ? { ok: true, value: { ...wanted.value, answers: [] } } : read;
}
