import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { ScenarioPlanner } from '../../plan/scenarios/scenario-planner.js';
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
  const { readLink } = await import('../link/link.js');
  const file = await readLink(place, bench.store.sheet.method);
  if (!file?.ok) return file;
  const { sheet } = file.value;
  const problems = await formulaProblems(bench.store.planner, sheet);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: sheet };
}

/** Formulas of a sheet from outside that cannot be compiled. */
export async function formulaProblems(planner: ScenarioPlanner, sheet: ScenarioSheet): Promise<readonly Problem[]> {
  const errors = await planner.learn(sheet);
  return [...errors].map(([value, error]) => ({ path: 'link', value, code: 'formula', allowed: { error } }));
}
