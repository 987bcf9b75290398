import type { InputQuantity } from '../../sheet/model.js';
import { influence, type Influence } from '../../sheet/explore/influence.js';
import { gridOf } from '../../sheet/explore/grid.js';
import { sweep, type Sweep } from '../../sheet/explore/sweep.js';
import { cellSwitch, ruleSwitches, type Switch } from '../../sheet/explore/switches.js';
import { turningPoints, type TurningPoint } from '../../sheet/explore/turning-points.js';
import { workBackwards, type WorkedBack } from '../../sheet/explore/work-backwards.js';
import { noticeQuantity, splitQuantity } from '../../training/method/names.js';
import { isCheck } from '../checks/check-quantities.js';
import type { Planner } from '../planner.js';

/** What is to be reached. */
export interface Goal {
  readonly quantity: string;
  readonly value: number;
}

/** The input of a planner's week that questions move. Throws for a name that is no input. */
export function inputOf({ sheet }: Planner, id: string): InputQuantity {
  const input = sheet.model.inputs.find((each) => each.id === id);
  if (!input) throw new Error(`${id} is no input`);
  return input;
}

/** One input of a planner's week moved over its steps, with the rules, splits and notices that start or stop on the way. */
export function sweepWeek(
  planner: Planner,
  { input: id, quantities }: { readonly input: string; readonly quantities: readonly string[] },
): { readonly input: InputQuantity; readonly sweep: Sweep; readonly points: readonly TurningPoint[] } {
  const input = inputOf(planner, id);
  return {
    input,
    sweep: sweep(planner.column, { input: id, values: gridOf(input), cells: quantities }),
    points: turningPoints(planner.column, input, switchesOf(planner)),
  };
}

/** The values of an input at which a planner's week reaches a goal, or the nearest it comes to it. */
export function workWeekBackwards(planner: Planner, id: string, { quantity, value }: Goal): WorkedBack {
  const question = { measure: quantity, target: value, switches: switchesOf(planner) };
  return workBackwards(planner.column, inputOf(planner, id), question);
}

/** What one step of each input does to a quantity of a planner's week, the most influential first. */
export function influenceOnWeek(planner: Planner, quantity: string): readonly Influence[] {
  return influence(planner.column, planner.sheet.model.inputs, quantity);
}

/** A check is on where it is worth a look, and `!` and its quantity where it calls for caution. */
const checkSwitches = ({ model, program }: Planner['sheet']): Switch[] =>
  model.blocks
    .flatMap(({ writes }) => writes.filter(isCheck))
    .flatMap((id) => {
      const register = program.registers.get(id);
      const from =
        (level: number): Switch['isOn'] =>
        ({ registers }) =>
          register !== undefined && (registers[register] ?? 0) >= level;
      return [
        { id, isOn: from(1) },
        { id: `!${id}`, isOn: from(2) },
      ];
    });

/** What can start and stop in a week: its rules, its splits (by `split_` and their id), its notices, its checks. */
function switchesOf({ method, sheet }: Planner): Switch[] {
  const splits = method.splits.flatMap(({ id, when }) => (when === undefined ? [] : [splitQuantity(id)]));
  const notices = method.rules.filter(({ kind, enabled = true }) => kind === 'notice' && enabled);
  return [
    ...ruleSwitches(sheet),
    ...splits.map((id) => cellSwitch(sheet, id)),
    ...notices.map(({ id }) => cellSwitch(sheet, id, noticeQuantity(id))),
    ...checkSwitches(sheet),
  ];
}
