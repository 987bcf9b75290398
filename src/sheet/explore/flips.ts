import type { Column } from '../column.js';
import { middleOf, type Bracket } from './bisect.js';
import { samplesBesideSteps, type InputRange } from './grid.js';
import type { Switch } from './switches.js';

/** A switch that is in one state at `below` and in the other at `above`. */
export interface Flip extends Bracket {
  readonly control: Switch;
  readonly starts: boolean;
}

/** An input moved on a copy of a column, to see which switches are on. */
export class SwitchBoard {
  readonly switches: readonly Switch[];
  readonly #scratch: Column;
  readonly #move: (value: number) => void;

  constructor(column: Column, input: InputRange, switches: readonly Switch[]) {
    this.switches = switches;
    this.#scratch = column.copy();
    this.#move = this.#scratch.mover(input.id);
  }

  look(at: number): Look {
    this.#move(at);
    return { at, states: this.switches.map((each) => each.isOn(this.#scratch)) };
  }

  isOn(control: Switch, at: number): boolean {
    this.#move(at);
    return control.isOn(this.#scratch);
  }
}

interface Look {
  readonly at: number;
  readonly states: readonly boolean[];
}

/** Every flip in the range, in order: between two steps of a choice, else between two neighbouring numbers. */
export function flipsOn(board: SwitchBoard, input: InputRange): Flip[] {
  if (board.switches.length === 0) return [];
  const looks = samplesBesideSteps(input).map((value) => board.look(value));
  return looks.slice(1).flatMap((high, index) => {
    const low = looks[index]!;
    return input.isChoice ? flipsBetween(board, low, high) : narrow(board, low, high);
  });
}

function narrow(board: SwitchBoard, low: Look, high: Look): Flip[] {
  if (low.states.every((state, index) => state === high.states[index])) return [];
  const middle = middleOf(low.at, high.at);
  if (middle === null) return flipsBetween(board, low, high);
  const between = board.look(middle);
  return [...narrow(board, low, between), ...narrow(board, between, high)];
}

function flipsBetween({ switches }: SwitchBoard, low: Look, high: Look): Flip[] {
  return switches.flatMap((control, index) =>
    low.states[index] === high.states[index]
      ? []
      : [{ control, below: low.at, above: high.at, starts: high.states[index]! }],
  );
}
