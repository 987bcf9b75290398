import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { copyScenario, newSheet, setInputs, setOverride } from '../../src/plan/scenarios/change.js';
import { mostScenarios, type ScenarioSheet } from '../../src/plan/scenarios/document.js';
import { ScenarioPlanner, type PlannedScenario } from '../../src/plan/scenarios/scenario-planner.js';
import type { PlanInputs } from '../../src/plan/document.js';
import { builtInMethod } from '../../src/training/method/built-in.js';
import { categoryIds, phaseIds, type PhaseId } from '../../src/training/method/ids.js';
import { SpreadsheetPeer } from '../bench/spreadsheet-peer.js';
import { quarterHours } from './athletes.js';
import { patience, runs } from './runs.js';
import { withHandsAsFormulas } from './hands-as-formulas.js';
import { rowsOf } from './tables.js';
import { worked } from './worked.js';

/*
 * The check values, each as coaches commonly have them: common practice, no source. At 3 h in season the intervals (18
 * minutes) are too small for a session and go to tempo running: assumption. Slow, tempo, intervals, cross, strength.
 */
const weeks = rowsOf(`
phase      | hours | minutes                            | rounded
build      | 3     | 54 .15*180+18=45 0 27 54           | 55 45 0 25 55
build      | 4     | 72 36 24 36 72                     | 70 35 25 35 75
build      | 4.5   | 81 40.5 27 40.5 81                 | 80 40 25 40 85
build      | 5     | 90 45 30 45 90                     | 90 45 30 45 90
build      | 6     | 108 54 36 54 108                   | 105 55 35 55 110
off-season | 3     | 45 27 0 36 72                      | 45 25 0 35 75
off-season | 4     | 60 36 0 48 96                      | 60 35 0 50 95
off-season | 4.5   | 67.5 40.5 0 54 108                 | 65 40 0 55 110
off-season | 5     | 75 45 0 60 120                     | 75 45 0 60 120
off-season | 6     | 90 54 0 72 144                     | 90 55 0 70 145
`)
  .slice(1)
  .map(([phase, hours = '', minutes = '', rounded = '']) => ({
    phase: phase === 'build' ? ('build' as const) : ('off-season' as const),
    hours: Number(hours),
    minutes: minutes.split(' ').map((cell) => worked(cell.replace(/([+=])/g, ' $1 ').replaceAll(' = ', '='))),
    rounded,
  }));

const person: PlanInputs = { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 };

/** A sheet with these weeks side by side. */
function sideBySide(columns: readonly { readonly phase: PhaseId; readonly hours: number }[]): ScenarioSheet {
  const [first = person, ...others] = columns;
  const one = newSheet(builtInMethod, { ...person, hours: first.hours, phase: first.phase });
  return others.reduce((sheet, { hours, phase }) => {
    const last = sheet.scenarios.at(-1)?.id ?? '';
    const copied = copyScenario(sheet, last);
    return setInputs(copied, copied.scenarios.at(-1)?.id ?? '', { hours, phase });
  }, one);
}

async function planned(sheet: ScenarioSheet, planner = new ScenarioPlanner()): Promise<readonly PlannedScenario[]> {
  expect((await planner.learn(sheet)).size).toBe(0);
  return planner.plan(sheet);
}

describe('six scenarios side by side: common practice, no source', { timeout: patience }, () => {
  it.each([
    [0, 1, 2, 3, 4, 5],
    [4, 5, 6, 7, 8, 9],
    [9, 0, 8, 1, 7, 2],
  ])('weeks %i %i %i %i %i %i', async (...places) => {
    const chosen = places.flatMap((place) => weeks[place] ?? []);
    const columns = await planned(sideBySide(chosen));
    expect(columns).toHaveLength(mostScenarios);
    columns.forEach(({ outcome }, index) => {
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      const { minutes, rounded } = outcome.value;
      categoryIds.forEach((id, place) => {
        expect(minutes[id]).toBeCloseTo(chosen[index]?.minutes[place] ?? NaN, 9);
      });
      expect(Object.values(rounded).join(' ')).toBe(chosen[index]?.rounded);
    });
  });

  it('stay right while one after the other is moved', async () => {
    const planner = new ScenarioPlanner();
    const start = sideBySide(weeks.slice(0, mostScenarios));
    await planned(start, planner);
    const moves = fc.array(fc.tuple(fc.nat({ max: 5 }), fc.nat({ max: weeks.length - 1 })), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(moves, (each) => {
        const shown = [0, 1, 2, 3, 4, 5];
        let sheet = start;
        for (const [column, place] of each) {
          const { hours, phase } = weeks[place] ?? person;
          shown[column] = place;
          sheet = setInputs(sheet, sheet.scenarios[column]?.id ?? '', { hours, phase });
          const found = planner
            .plan(sheet)
            .map(({ outcome }) => (outcome.ok ? Object.values(outcome.value.rounded).join(' ') : ''));
          expect(found).toEqual(shown.map((index) => weeks[index]?.rounded));
        }
      }),
      runs(30, 3000),
    );
  });
});

describe('a general spreadsheet engine on the same sheet, with values put over it', { timeout: patience }, () => {
  const hands: readonly (readonly [string, Readonly<Record<string, string>>])[] = [
    ['a value over minutes', { strength_minutes: '70' }],
    ['a formula over minutes', { strength_minutes: 'value * 0.9 + 3', cross_minutes: 'weekly_hours * 4' }],
    ['a share', { tempo_share: '0.25' }],
    ['a share of a split, and minutes', { in_season_slow_share: '0.45', intervals_minutes: 'max(value, 20)' }],
    ['an input', { weekly_hours: 'min(value + 1, 20)', strength_cap: '95' }],
    ['a sum and a limit', { running_minutes: 'value - slow_minutes', tempo_shortest: '30' }],
  ];
  const watched = [
    ...categoryIds.flatMap((id) => [`${id}_minutes`, `${id}_share`]),
    'planned_minutes',
    'running_minutes',
    'running_share',
  ];

  it.each(hands)('%s', async (_, over) => {
    const sheet = Object.entries(over).reduce(
      (each, [quantity, formula]) => setOverride(each, 'a', { quantity, formula }),
      newSheet(builtInMethod, person),
    );
    const planner = new ScenarioPlanner();
    const [first] = await planned(sheet, planner);
    if (!first) throw new Error('no scenario');
    const { model, settingOf } = withHandsAsFormulas(first.planner.sheet.model);
    const peer = new SpreadsheetPeer(model, 1);
    const cases = fc.record({ hours: fc.constantFrom(...quarterHours), phase: fc.constantFrom(...phaseIds) });
    fc.assert(
      fc.property(cases, ({ hours, phase }) => {
        const { scenarios } = sheet;
        const [{ outcome, planner: week } = first] = planner.plan({
          ...sheet,
          scenarios: [{ ...scenarios[0], inputs: { ...person, hours, phase } }],
        });
        peer.set(settingOf('weekly_hours'), [hours]);
        peer.set(settingOf('season_phase'), [phaseIds.indexOf(phase)]);
        const numbers = watched.map((id) => week.column.value(id));
        const expected = watched.map((id) => peer.value(id, 0));
        // Where there is not enough, the one gives no number and the other a negative one.
        if (!outcome.ok) return void expect(Math.min(...expected)).toBeLessThan(0);
        numbers.forEach((number, index) => {
          const other = expected[index] ?? NaN;
          expect(Math.abs(number - other)).toBeLessThanOrEqual(1e-9 * Math.max(1, other));
        });
      }),
      runs(40, 2000),
    );
  });
});
