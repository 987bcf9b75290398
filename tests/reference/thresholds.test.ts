import { describe, expect, it } from 'vitest';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../src/training/method/ids.js';
import type { EventId, LevelId, PhaseId } from '../../src/training/method/ids.js';
import { differences } from './differences.js';
import { planFor } from './plan-door.js';
import { rowsOf } from './tables.js';
import { inSeason, offSeason, recovery, taper } from './threshold-tables.js';
import { referenceWeek } from './week-reference.js';
import type { WeekAnswer, WeekQuestion } from './week-reference.js';
import { worked } from './worked.js';

interface Person {
  readonly phase: PhaseId;
  readonly level: LevelId;
}

const people: readonly Person[] = phaseIds.flatMap((phase) => levelIds.map((level) => ({ phase, level })));
const isNew = ({ level }: Person): boolean => level === 'new';

const tables = [
  {
    split: 'in_season',
    table: inSeason,
    who: people.filter((person) => ['base', 'build', 'peak'].includes(person.phase) && !isNew(person)),
  },
  {
    split: 'off_season',
    table: offSeason,
    who: people.filter((person) => person.phase === 'off-season' || isNew(person)),
  },
  { split: 'taper', table: taper, who: people.filter((person) => person.phase === 'taper' && !isNew(person)) },
  { split: 'recovery', table: recovery, who: people.filter((person) => person.phase === 'recovery' && !isNew(person)) },
];

/** What is said of the event, between what is said of the hours and of slow running. Common practice. */
const eventNotices: Readonly<Record<EventId, readonly string[]>> = {
  none: ['no-event'],
  '5k': ['short-event'],
  '10k': [],
  'half-marathon': [],
  marathon: [],
  longer: ['long-event'],
};

const fullNames: Readonly<Record<string, string>> = {
  cap: 'strength-cap',
  intervals: 'intervals-too-small',
  tempo: 'tempo-too-small',
  cross: 'cross-too-small',
  strength: 'strength-too-small',
  few: 'few-hours',
  many: 'many-hours',
  slow: 'slow-too-small',
};

describe.each(tables)('a week of the $split split', ({ split, table, who }) => {
  it.each(rowsOf(table).slice(1))('of %s minutes with a cap of %s', (...row) => {
    for (const { phase, level } of who) {
      for (const event of eventIds) {
        const question = { ...amountsOf(row), phase, level, event };
        const answer = referenceWeek(question);
        expect({ phase, level, ...summaryOf(answer) }).toEqual({ phase, level, ...expectedOf(split, row, event) });
        expect({ phase, level, differences: differences(planFor(question), answer) }).toEqual({
          phase,
          level,
          differences: [],
        });
      }
    }
  });
});

/** Minutes such as `400/3` are counted in thirds of a minute. */
function amountsOf([minutes = '', cap = '']: readonly string[]): Omit<WeekQuestion, 'phase' | 'level' | 'event'> {
  const grainsPerMinute = Number(minutes.split('/')[1] ?? 2);
  return { grains: Math.round(worked(minutes) * grainsPerMinute), grainsPerMinute, strengthCap: worked(cap) };
}

/** The row of the table, with minutes as numbers to nine digits. */
function expectedOf(split: string, row: readonly string[], event: EventId): object {
  const [, , slow = '', tempo = '', intervals = '', cross = '', strength = '', rules = '', says = '', rounded] = row;
  const names = (list: string) => list.split(' ').flatMap((name) => fullNames[name] ?? []);
  const ofHours = names(says.replace('slow', ''));
  const ofSlow = names(says).slice(ofHours.length);
  return {
    split,
    minutes: [slow, tempo, intervals, cross, strength].map((cell) => worked(cell).toFixed(9)),
    rules: names(rules),
    says: [...ofHours, ...eventNotices[event], ...ofSlow],
    rounded,
  };
}

function summaryOf({ split, parts, partsPerMinute, moves, notices, rounded }: WeekAnswer): object {
  return {
    split,
    minutes: categoryIds.map((category) => (parts[category] / partsPerMinute).toFixed(9)),
    rules: moves.map(({ rule }) => rule),
    says: notices,
    rounded: categoryIds.map((category) => rounded[category]).join(' '),
  };
}
