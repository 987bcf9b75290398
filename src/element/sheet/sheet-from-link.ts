import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { Outcome, Problem } from '../../problem.js';
import { linkKey, partOf } from '../link/fragment.js';
import type { Bench } from './bench.js';

/** Opens the sheet in the address of the page, if there is one; a link that cannot be opened says why and changes nothing. */
export async function sheetFromLink(bench: Bench): Promise<void> {
  const opened = await read(bench);
  if (!opened) return;
  if (opened.ok) bench.replace(opened.value);
  bench.say(opened.ok ? { key: 'sheet.link-used' } : { key: 'sheet.faulty-link', problems: opened.problems });
}

async function read(bench: Bench): Promise<Outcome<ScenarioSheet> | null> {
  const place = { href: location.href, key: linkKey(bench.host.id) };
  if (partOf(place.href, place.key) === null) return null;
  const { readSheetText, sheetTextIn } = await import('../link/link.js');
  const text = await sheetTextIn(place);
  if (!text.ok) return text;
  if (text.value === null) return null;
  const sheet = readSheetText(text.value, bench.store.sheet.method);
  if (!sheet.ok) return sheet;
  const problems = await formulaProblems(bench, sheet.value);
  return problems.length > 0 ? { ok: false, problems } : sheet;
}

async function formulaProblems({ store }: Bench, sheet: ScenarioSheet): Promise<readonly Problem[]> {
  const errors = await store.planner.learn(sheet);
  return [...errors].map(([value, error]) => ({ path: 'link', value, code: 'formula', allowed: { error } }));
}
