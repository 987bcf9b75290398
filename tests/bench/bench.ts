import { agree } from './agree.js';
import { formulasRace, roundedRace } from './built-in-sheet.js';
import { concreteRace } from './concrete.js';
import { race, type Finish, type Race } from './measure.js';
import { seasonRace } from './season.js';
import { sweepRace } from './sweep.js';
import { syntheticRace } from './synthetic-sheet.js';
import { planRace } from './whole-plan.js';

const races: readonly (() => Race)[] = [
  formulasRace,
  roundedRace,
  planRace,
  sweepRace,
  seasonRace,
  concreteRace,
  () => syntheticRace('wide', 1),
  () => syntheticRace('narrow', 1),
  () => syntheticRace('wide', 6),
  () => syntheticRace('narrow', 6),
];

/** Lets every race be run, after its runners have agreed on all results. */
export function* finishes(rounds: number): Generator<{ readonly title: string; readonly finish: readonly Finish[] }> {
  for (const make of races) {
    const each = make();
    agree(each);
    yield { title: each.title, finish: race(each, rounds) };
  }
}
