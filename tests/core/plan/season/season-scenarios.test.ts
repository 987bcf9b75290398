import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSheetText, writeSheetText } from '../../../../src/exchange/sheet-link.js';
import { builtInPlanner } from '../../../../src/plan.js';
import { createSeasonMaker } from '../../../../src/plan/season/create-season-maker.js';
import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import {
  copyScenario,
  newScenarioId,
  newSheet,
  scenarioOf,
  setInputs,
  setOverride,
  setSeason,
  switchRule,
} from '../../../../src/plan/scenarios/change.js';
import type { ScenarioSheet } from '../../../../src/plan/scenarios/document.js';
import { beginHistory, record, redo, undo } from '../../../../src/plan/scenarios/history.js';
import { ScenarioPlanner, type PlannedScenario } from '../../../../src/plan/scenarios/scenario-planner.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { patience, runs } from '../../../reference/runs.js';
import { anySeasons } from '../../../reference/season/random-seasons.js';
import { valueOf } from '../../training/method/documents.js';
import { fourHours, frozen, learned } from '../scenarios/sheets.js';

const usual: SeasonRequest = { date: '2027-04-11', weeks: 16 };
const other: SeasonRequest = { date: '2027-04-11', weeks: 12, rise: 0.08 };
const plain = frozen(newSheet(builtInMethod, fourHours));
const two = frozen(copyScenario(plain, 'a'));
const second = newScenarioId(plain);

async function seasonPlanner(sheet: ScenarioSheet): Promise<ScenarioPlanner> {
  const planner = await learned(sheet);
  planner.teach({ season: createSeasonMaker() });
  return planner;
}
const seasonsOf = ({ scenarios }: ScenarioSheet) => scenarios.map(({ season }) => season);
const written = (planned: readonly PlannedScenario[]) => planned.map(({ outcome }) => JSON.stringify(outcome));

describe('setSeason(sheet, id, season)', () => {
  test('sets it here, and where there is none yet', () => {
    const both = setSeason(two, 'a', usual);
    expect(seasonsOf(both)).toEqual([usual, usual]);
    expect(seasonsOf(setSeason(both, second, other))).toEqual([usual, other]);
    expect(seasonsOf(two)).toEqual([null, null]);
  });

  test('is no act where nothing changes, whichever way it is said', () => {
    const both = setSeason(two, 'a', usual);
    expect(setSeason(both, 'a', { weeks: 16, date: '2027-04-11', rise: undefined })).toBe(both);
    expect(setSeason(both, 'a', { ...usual, weeks: 15 })).not.toBe(both);
  });

  test('is copied with its scenario', () => {
    const sheet = copyScenario(setSeason(plain, 'a', usual), 'a');
    expect(seasonsOf(sheet)).toEqual([usual, usual]);
  });

  test('can be taken back and done again', async () => {
    const first = beginHistory<ScenarioSheet>(frozen(setSeason(plain, 'a', usual)));
    const history = record(first, frozen(setSeason(first.present, 'a', other)));
    const planner = await seasonPlanner(plain);
    const weeks = (sheet: ScenarioSheet): number | undefined => {
      const [planned] = planner.plan(sheet);
      return planned && valueOf(planned.outcome).season?.weeks.length;
    };
    // Two weeks of rest come after the event.
    expect(weeks(history.present)).toBe(14);
    expect(undo(history).present).toBe(first.present);
    expect(weeks(undo(history).present)).toBe(18);
    expect(weeks(redo(undo(history)).present)).toBe(14);
  });
});

describe('a scenario with a season', { timeout: patience }, () => {
  test('has the plan that the built-in planner has for it', async () => {
    const planner = await seasonPlanner(plain);
    fc.assert(
      fc.property(anySeasons(builtInMethod), (season) => {
        const [planned] = planner.plan(setSeason(plain, 'a', season));
        expect(planned?.outcome).toEqual(builtInPlanner().plan({ ...fourHours, season }));
      }),
      runs(60, 5000),
    );
  });

  test('has none of it while the planner knows no seasons, and all of it once it has learned', async () => {
    const sheet = setSeason(plain, 'a', usual);
    const planner = await learned(sheet);
    const [before] = planner.plan(sheet);
    expect(before && valueOf(before.outcome).season).toBeNull();
    const maker = createSeasonMaker();
    expect([planner.teach({ season: maker }), planner.teach({ season: maker })]).toEqual([true, false]);
    const [after] = planner.plan(sheet);
    expect(after && valueOf(after.outcome).season?.weeks).toHaveLength(18);
  });

  test('is not worked out again where nothing of it changed', async () => {
    const sheet = setSeason(two, 'a', usual);
    const planner = await seasonPlanner(sheet);
    const [a, b] = planner.plan(sheet);
    const [again, changed] = planner.plan(setSeason(sheet, second, other));
    expect(again).toBe(a);
    expect(changed).not.toBe(b);
    expect(again?.planner.sheet.program).toBe(changed?.planner.sheet.program);
  });

  test('has weeks by what was put over its quantities and by the rules it has', async () => {
    const sheet = switchRule(
      setOverride(setSeason(two, 'a', { ...usual, mostHours: 8, rise: 0.2 }), second, {
        quantity: 'strength_minutes',
        formula: '60',
      }),
      'a',
      'strength-cap',
    );
    const [a, b] = (await seasonPlanner(sheet)).plan(sheet).map(({ outcome }) => valueOf(outcome).season);
    // 30 % of 480 minutes, not capped at 120; and 60 in every week.
    expect(Math.max(...(a?.weeks ?? []).map(({ minutes }) => minutes.strength))).toBe(144);
    expect(new Set(b?.weeks.map(({ minutes }) => minutes.strength))).toEqual(new Set([60]));
  });

  test('after any acts a new planner gives the same seasons', async () => {
    const act = fc.oneof(
      anySeasons(builtInMethod).map(
        (season) =>
          (sheet: ScenarioSheet, id: string): ScenarioSheet =>
            setSeason(sheet, id, season),
      ),
      fc.integer({ min: 2, max: 80 }).map(
        (quarters) =>
          (sheet: ScenarioSheet, id: string): ScenarioSheet =>
            setInputs(sheet, id, { hours: quarters / 4 }),
      ),
      fc.constantFrom('strength-cap', 'strength-upkeep').map(
        (rule) =>
          (sheet: ScenarioSheet, id: string): ScenarioSheet =>
            switchRule(sheet, id, rule),
      ),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(act, fc.boolean()), { minLength: 1, maxLength: 6 }), async (some) => {
        const planner = await seasonPlanner(two);
        let sheet: ScenarioSheet = two;
        for (const [make, isFirst] of some) {
          sheet = frozen(make(sheet, isFirst ? 'a' : second));
          planner.plan(sheet);
        }
        const afresh = await seasonPlanner(sheet);
        expect(written(planner.plan(sheet))).toEqual(written(afresh.plan(sheet)));
      }),
      runs(25, 3000),
    );
  });
});

describe('a sheet with a season in a link', () => {
  test('is the same sheet', () => {
    const sheet = setSeason(setSeason(two, 'a', usual), second, {
      ...other,
      events: [{ date: '2027-03-07', event: '10k' }],
      byHand: [{ start: '2027-02-15', hours: 0, reason: 'holiday', sessions: {} }],
    });
    const again = valueOf(readSheetText(writeSheetText(sheet), builtInMethod));
    expect(again).toEqual(sheet);
    expect(writeSheetText(again)).toBe(writeSheetText(sheet));
  });

  test('opens whatever hours were set since: a most below them is for the plan to tell', () => {
    const sheet = setInputs(setSeason(plain, 'a', { ...usual, mostHours: 6 }), 'a', { hours: 8 });
    const again = readSheetText(writeSheetText(sheet), builtInMethod);
    expect(again.ok ? scenarioOf(again.value, 'a').season : again.problems).toEqual({ ...usual, mostHours: 6 });
  });
});
