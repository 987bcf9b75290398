import type { PlanFile } from '../../plan/file/document.js';
import { scenarioOf } from '../../plan/scenarios/change.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import type { Problem } from '../../problem.js';
import type { HandoutSeat, LateOnes } from './handout-seat.js';

/** What a page that has no panel for it does not show of a plan. */
const parts = ['scenarios', 'hands', 'days', 'season', 'running', 'strength', 'checks', 'record'] as const;
export type NotShown = (typeof parts)[number];

/**
 * Puts a plan on the planner, as a person's act.
 *
 * @returns what is wrong with its formulas, and then nothing was changed; else what of it the page has no panel for.
 */
export async function put(
  { late, show }: HandoutSeat,
  file: PlanFile,
): Promise<{ readonly problems: readonly Problem[]; readonly notShown: readonly NotShown[] }> {
  await Promise.all(Object.values(late).map(({ ready }) => ready));
  const problems = (await late.sheet.panel?.problemsWith(file.sheet)) ?? [];
  if (problems.length > 0) return { problems, notShown: [] };
  const scenario = scenarioOf(file.sheet, file.onShow);
  late.running.panel?.put(file.running ?? {});
  late.strength.panel?.put(file.strength ?? {});
  late.checks.panel?.put(file.checks ?? {});
  late.record.panel?.put(file.record);
  if (late.sheet.panel) late.sheet.panel.put(file.sheet, file.onShow);
  else {
    late.week.panel?.take(scenario.week);
    late.season.panel?.take(scenario.season);
    show(scenario.inputs, scenario.sessions);
  }
  return { problems: [], notShown: notShown(late, file, scenario) };
}

function notShown(late: LateOnes, file: PlanFile, scenario: Scenario): readonly NotShown[] {
  const { sheet } = file;
  const hands = [sheet.formulas, sheet.rows, sheet.rulesOff, scenario.overrides, scenario.rulesOff];
  const missing: Readonly<Record<NotShown, boolean>> = {
    scenarios: !late.sheet.panel && sheet.scenarios.length > 1,
    hands: !late.sheet.panel && hands.some((part) => Object.keys(part).length > 0),
    days: !late.week.panel && scenario.week !== null,
    season: !late.season.panel && scenario.season !== null,
    running: !late.running.panel && file.running !== null,
    strength: !late.strength.panel && file.strength !== null,
    checks: !late.checks.panel && file.checks !== null,
    record: !late.record.panel && file.record.length > 0,
  };
  return parts.filter((part) => missing[part]);
}
