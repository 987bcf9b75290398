import fc from 'fast-check';
import club from '../../../demo/club-method.json';
import { mostScenarios, type OwnRow, type Scenario, type ScenarioSheet } from '../../../src/plan/scenarios/document.js';
import { quantityIds } from '../../../src/sheet/sheet.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import type { Method } from '../../../src/training/method/document.js';
import { expandMethod } from '../../../src/training/method/expand.js';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../../src/training/method/ids.js';
import { readMethod } from '../../../src/training/method/read-method.js';
import { anySeasons } from '../../reference/season/random-seasons.js';
import { anyWeeks } from './random-wishes.js';
import { valueOf } from '../training/method/documents.js';

/** The built-in method and a coach's. */
export const methods: readonly [Method, Method] = [builtInMethod, valueOf(readMethod(club))];

/** Plain objects, as JSON.parse makes them. */
const recordOf = <T>(fields: { [K in keyof T]: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> =>
  fc.record(fields, { noNullPrototype: true });
const names = fc.oneof(fc.string({ unit: 'binary', maxLength: 20 }), fc.string({ maxLength: 60 }));
const formulas = fc.oneof(
  fc.constantFrom('0', '45', 'value * 1.1', 'weekly_hours > 6 ? 90 : value', 'max(value,\n30) # "noted"'),
  fc.string({ unit: 'binary', maxLength: 40 }),
);
const someOf = (ids: readonly string[]): fc.Arbitrary<string[]> => fc.subarray([...ids], { maxLength: 5 });
const overSome = (ids: readonly string[]): fc.Arbitrary<Record<string, string>> =>
  someOf(ids).chain((keys) => recordOf(Object.fromEntries(keys.map((key) => [key, formulas]))));
const ids = fc.stringMatching(/^[A-Za-z0-9_-]{1,40}$/);

interface Around {
  readonly method: Method;
  readonly rows: readonly OwnRow[];
}

function scenarios({ method, rows }: Around): fc.Arbitrary<Scenario> {
  const { weekly_hours: hours, strength_cap: cap } = method.inputs;
  const between = ({ least, most }: { least: number; most: number }) =>
    fc.double({ min: least, max: most, noNaN: true });
  const durations = fc.array(fc.integer({ min: 1, max: 1440 }), { maxLength: 6 });
  return recordOf<Scenario>({
    id: ids,
    name: names,
    inputs: recordOf({
      hours: between(hours),
      phase: fc.constantFrom(...phaseIds),
      level: fc.constantFrom(...levelIds),
      event: fc.constantFrom(...eventIds),
      strengthCap: between(cap),
    }),
    sessions: someOf(categoryIds).chain((keys) => recordOf(Object.fromEntries(keys.map((key) => [key, durations])))),
    week: fc.option(anyWeeks(method), { nil: null }),
    season: fc.option(anySeasons(method), { nil: null }),
    overrides: overSome([...quantityIds(expandMethod(method)), ...rows.map(({ id }) => id)]),
    rulesOff: someOf(method.rules.map(({ id }) => id)),
  });
}

function sheetsAround({ method, rows }: Around): fc.Arbitrary<ScenarioSheet> {
  const columns = fc.uniqueArray(scenarios({ method, rows }), {
    minLength: 1,
    maxLength: mostScenarios,
    selector: ({ id }) => id,
  });
  const edited = expandMethod(method).formulas.map(({ id }) => id);
  return fc
    .record({ columns, formulas: overSome(edited), rulesOff: someOf(method.rules.map(({ id }) => id)), at: fc.nat() })
    .map(({ columns: [first, ...others], at, ...rest }) => {
      if (!first) throw new Error('a sheet has a scenario');
      const all = [first, ...others];
      return { method, rows, ...rest, scenarios: [first, ...others], reference: all[at % all.length]?.id ?? first.id };
    });
}

const ownRows: fc.Arbitrary<OwnRow[]> = fc.uniqueArray(
  recordOf({ id: fc.stringMatching(/^own_[a-z0-9_]{0,36}$/), name: names, formula: formulas }),
  { maxLength: 3, selector: ({ id }) => id },
);

/** Sheets as people could have made them, by either method. */
export const anySheets: fc.Arbitrary<ScenarioSheet> = fc
  .record({ method: fc.constantFrom(...methods), rows: ownRows })
  .chain(sheetsAround);
