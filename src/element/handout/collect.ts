import type { PlanFile } from '../../plan/file/document.js';
import { newSheet, setSeason, setSessions, setWeek } from '../../plan/scenarios/change.js';
import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { View } from '../view.js';
import type { HandoutSeat } from './handout-seat.js';

/** What a file has beside what is written on the handout. */
export type Collected = Omit<PlanFile, 'name' | 'handout'>;

/** What a plan that was opened has beyond what the page shows: it is kept, and written again. */
export type Carried = Pick<PlanFile, 'running' | 'strength' | 'checks' | 'record'>;

export const nothingCarried: Carried = { running: null, strength: null, checks: null, record: [] };

/** Everything that a person has set, from the panels that the page shows; of the others what was opened last. */
export function collect({ late, picks }: HandoutSeat, view: View, carried: Carried): Collected {
  const { running, strength, checks, record, sheet } = late;
  return {
    ...(sheet.panel?.whole ?? { sheet: sheetOf(view, picks()), onShow: 'a' }),
    running: running.panel ? running.panel.request : carried.running,
    strength: strength.panel ? strength.panel.request : carried.strength,
    checks: checks.panel ? checks.panel.request : carried.checks,
    record: record.panel ? record.panel.sessions : carried.record,
  };
}

/** The week on show as the only scenario. */
function sheetOf({ method, plan }: View, picks: Parameters<typeof setSessions>[2]): ScenarioSheet {
  const sheet = newSheet(method, plan.inputs);
  const id = sheet.reference;
  const picked = setSessions(sheet, id, picks);
  const laid = plan.week ? setWeek(picked, id, plan.week.wishes) : picked;
  return plan.season ? setSeason(laid, id, plan.season.wishes) : laid;
}
