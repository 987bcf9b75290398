import type { PlanRequest } from '../../src/plan/document.js';
import { Planner } from '../../src/plan/planner.js';
import { createSeasonMaker } from '../../src/plan/season/create-season-maker.js';
import type { PlanSeason } from '../../src/plan/season/document.js';
import type { SeasonRequest } from '../../src/plan/season/wishes.js';
import { createSheet } from '../../src/sheet/sheet.js';
import { builtInFormulas } from '../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../src/training/method/built-in.js';
import { expandMethod } from '../../src/training/method/expand.js';
import { handWrittenSeason, type HandWrittenSeason, type SeasonQuestion } from './hand-written-season.js';
import { weekCount } from './hand-written-season-hours.js';
import type { Race, Runner } from './measure.js';

/** A year to a half marathon, with a holiday and another event on the way. */
const year: SeasonRequest = {
  date: '2027-04-11',
  weeks: 52,
  events: [{ date: '2027-03-07', event: '10k' }],
  byHand: [{ start: '2026-10-19', hours: 0, reason: 'holiday' }],
};
const person = { phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 } as const;

/** What six scenarios might try. */
const scenarios: readonly (readonly [season: SeasonRequest, others: PlanRequest])[] = [
  [{}, {}],
  [{ rise: 0.05 }, {}],
  [{ easierEvery: 3, easierDrop: 0.2 }, {}],
  [{ taperDrop: 0.41 }, { strengthCap: 90 }],
  [{ upkeepFrom: 'peak', upkeepSessions: 1 }, {}],
  [{}, { level: 'trained', event: 'longer' }],
];

/** Hours from 3 to 8 and back, a quarter of an hour a step. */
const upwards = Array.from({ length: 21 }, (_, step) => 3 + step / 4);
const slider: readonly number[] = [...upwards, ...upwards.slice(1, -1).reverse()];
const hoursAt = (event: number): number => slider[event % slider.length] ?? NaN;

const requestsAt = (event: number): readonly PlanRequest[] =>
  scenarios.map(([season, others]) => ({
    ...{ ...person, hours: hoursAt(event), ...others },
    season: { ...year, ...season },
  }));

const day = 24 * 60 * 60 * 1000;
const mondays = Array.from({ length: weekCount }, (_, week) =>
  new Date(Date.UTC(2026, 3, 13) + 7 * week * day).toISOString().slice(0, 10),
);

function questionOf({ hours = NaN, season, phase: _, ...others }: PlanRequest): SeasonQuestion {
  const {
    rise = 0.1,
    easierEvery = 4,
    easierDrop = 0.3,
    taperDrop = 0.5,
    upkeepFrom,
    upkeepSessions = 2,
  } = season ?? {};
  return {
    ...{ start: hours * 60, most: Math.min(20, Math.floor(hours * 1.5 * 4 + 1e-9) / 4) * 60 },
    ...{
      rise,
      easierEvery,
      easierDrop,
      taperDrop,
      upkeepFrom: upkeepFrom === 'peak' ? 'peak' : 'taper',
      upkeepSessions,
    },
    inputs: { ...person, ...others },
    mondays,
  };
}

function shownOf({ weeks, notices }: PlanSeason): HandWrittenSeason {
  return {
    notices,
    weeks: weeks.map(({ hours, minutes, rounded, sessions, load, longestRun, notices: said }) => {
      return { hours, minutes, rounded, sessions, load, longestRun, notices: said };
    }),
  };
}

const runnerOf = (name: string, all: (event: number) => readonly (HandWrittenSeason | PlanSeason)[]): Runner => ({
  name,
  run: (event) => all(event).reduce((sum, { weeks }) => sum + (weeks.at(-1)?.load ?? NaN), 0),
  result: (event) => all(event).map((season) => ('wishes' in season ? shownOf(season) : season)),
});

const byHand = (): Runner =>
  runnerOf('by hand, the seasons alone', (event) =>
    requestsAt(event).map((request) => handWrittenSeason(questionOf(request))),
  );

function seasonFrom(planner: Planner, request: PlanRequest): PlanSeason {
  const outcome = planner.plan(request);
  if (!outcome.ok || !outcome.value.season) throw new Error(JSON.stringify(outcome));
  return outcome.value.season;
}

/** Six planners on one sheet, as scenarios of one shape have them; each plan has its own week and derivations too. */
function plans(): Runner {
  const sheet = createSheet(expandMethod(builtInMethod), builtInFormulas);
  const season = createSeasonMaker();
  const planners = scenarios.map(() => new Planner({ method: builtInMethod, sheet }, { season }));
  return runnerOf('weekwright, plans with their seasons', (event) =>
    requestsAt(event).flatMap((request, index) => {
      const planner = planners[index];
      return planner ? [seasonFrom(planner, request)] : [];
    }),
  );
}

/** The same without the plans around them. */
function seasonsAlone(): Runner {
  const sheet = createSheet(expandMethod(builtInMethod), builtInFormulas);
  const maker = createSeasonMaker();
  return runnerOf('  of ours: the seasons alone', (event) =>
    requestsAt(event).flatMap(({ season: given, sessions: _, week: __, ...others }) => {
      const inputs = { ...person, hours: hoursAt(event), ...others };
      const read = maker.read(given, { method: builtInMethod, inputs });
      const carried = read.ok ? maker.carry({ method: builtInMethod, sheet }, { inputs, season: read.value }) : null;
      return carried ? [carried] : [];
    }),
  );
}

/** Six scenarios with a year each, and one step of the hours in all of them. */
export function seasonRace(): Race {
  return {
    title: `The season: one step of the hours, ${weekCount} weeks in ${scenarios.length} scenarios`,
    runners: [byHand(), plans(), seasonsAlone()],
    events: slider.length,
  };
}
