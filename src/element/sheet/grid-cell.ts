import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import type { SheetRow } from '../../plan/scenarios/rows.js';
import { isNear } from '../../sheet/numbers.js';
import type { CategoryId } from '../../training/method/ids.js';
import { quantityUnit } from '../../words/quantity-value.js';
import { cellText, differenceText } from '../../words/sheet/cell-text.js';
import type { GridCell } from './shown-cell.js';
import type { SheetView } from './sheet-view.js';

const empty: GridCell = { text: '–', difference: '', mark: 'none', value: null };

/** The cell of a row in a scenario; `reference` is the scenario it is compared with, itself for the reference. */
export function gridCell(
  view: SheetView,
  row: SheetRow,
  { planned, reference }: { readonly planned: PlannedScenario; readonly reference: PlannedScenario },
): GridCell {
  switch (row.kind) {
    case 'quantity':
      return quantityCell(view, row.quantity, { planned, reference });
    case 'sessions':
      return sessionsCell(view, row.category, planned);
    case 'rule':
      return ruleCell(view, row.rule, planned);
  }
}

function quantityCell(
  { words, bench }: SheetView,
  id: string,
  { planned, reference }: { readonly planned: PlannedScenario; readonly reference: PlannedScenario },
): GridCell {
  const unit = quantityUnit(bench.method, id);
  const [value, compared] = [planned, reference].map((each) => numberIn(each, id));
  if (value === undefined || compared === undefined) return empty;
  return {
    text: Number.isNaN(value) ? words.say('value.none') : cellText(words, unit, value),
    difference: planned === reference ? '' : differenceText(words, unit, { value, reference: compared }),
    mark: Number.isNaN(value) ? 'wrong' : handOn(planned, id, value),
    value: Number.isNaN(value) ? null : value,
  };
}

/** What a person's hand did to a quantity; what it leaves as it was is not marked. */
function handOn(planned: PlannedScenario, id: string, value: number): 'by-hand' | 'gives-way' | 'none' {
  const hand = planned.planner.sheet.cells.hands.get(id);
  if (!hand) return 'none';
  if (hand.kind === 'override') return 'by-hand';
  return isNear(numberIn(planned, hand.before) ?? Number.NaN, value) ? 'none' : 'gives-way';
}

/** The number of a quantity in a scenario: NaN where it failed, undefined where its sheet has no such quantity. */
export function numberIn({ planner: { column } }: PlannedScenario, id: string): number | undefined {
  const register = column.program.registers.get(id);
  return register === undefined ? undefined : column.registers[register];
}

function sessionsCell({ words }: SheetView, category: CategoryId, { outcome }: PlannedScenario): GridCell {
  const sessions = outcome.ok ? outcome.value.sessions[category] : [];
  const text = words.sessions(sessions);
  return text === '' ? empty : { ...empty, text, value: text };
}

function ruleCell({ words }: SheetView, id: string, { planner, outcome }: PlannedScenario): GridCell {
  const isOff = planner.method.rules.find((rule) => rule.id === id)?.enabled === false;
  const acted = outcome.ok && outcome.value.rules.find((rule) => rule.id === id)?.acted === true;
  const state = isOff ? 'off' : acted ? 'acts' : 'idle';
  const text = words.say(`sheet.rule.${state}`);
  return { ...empty, text, mark: isOff ? 'off' : 'none', value: text };
}
