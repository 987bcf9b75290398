import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeSeasonChange } from '../../../../src/plan/season/acts.js';
import type { PlanSeason, SeasonChange, SeasonNotice } from '../../../../src/plan/season/document.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { anyAthletes } from '../../../reference/athletes.js';
import { patience, runs } from '../../../reference/runs.js';
import { anySeasons } from '../../../reference/season/random-seasons.js';
import { seasonOf } from '../../../reference/season/season-door.js';

const asked = fc.record({ inputs: anyAthletes, season: anySeasons(builtInMethod) });

interface Said {
  readonly notice: SeasonNotice;
  /** The Monday of the week that it is said of; null for the season as a whole. */
  readonly start: string | null;
}

const said = ({ notices, weeks }: PlanSeason): readonly Said[] => [
  ...notices.map((notice) => ({ notice, start: null })),
  ...weeks.flatMap((week) => week.notices.map((notice) => ({ notice, start: week.start }))),
];
const isSaid = (season: PlanSeason, { notice: { code }, start }: Said): boolean =>
  said(season).some((other) => other.notice.code === code && other.start === start);

const weeksBefore = ({ weeks }: PlanSeason, start: string): string =>
  JSON.stringify(weeks.filter((week) => week.start < start).map(({ hours, longestRun }) => [hours, longestRun]));

const kindsMade = new Set<SeasonChange['kind']>();

describe('what would help helps', { timeout: patience }, () => {
  test('for any notice of any season: it is gone once the change is made', () => {
    fc.assert(
      fc.property(asked, fc.nat(), ({ inputs, season: request }, at) => {
        const season = seasonOf(request, inputs);
        const offers = said(season).flatMap((each) => each.notice.waysOut.map((change) => ({ each, change })));
        const offer = offers[at % offers.length];
        if (!offer) return;
        kindsMade.add(offer.change.kind);
        const { start } = offer.each;
        const changed = seasonOf(makeSeasonChange(request, season.wishes, offer.change), inputs);
        // A week set by hand is no rise any more: where the rises before it are steeper then, it is held against others.
        if (start !== null && weeksBefore(changed, start) !== weeksBefore(season, start)) return;
        expect({ ...offer, isStillSaid: isSaid(changed, offer.each) }).toEqual({ ...offer, isStillSaid: false });
      }),
      runs(400, 20_000),
    );
    expect(kindsMade.size).toBeGreaterThanOrEqual(5);
  });
});
