import type { RunningRules } from '../method/running-rules.js';
import { secondsFor, uptakeOf } from './oxygen.js';
import { riegelSeconds, type RunTime } from './riegel.js';

/** Why the slower end of a time is later than the equations say. */
export const wideningReasons = ['marathon', 'outside'] as const;

/** What a race is worth at another distance. Times are in seconds. */
export interface EqualTime {
  readonly metres: number;
  /** By the law of endurance. */
  readonly riegel: number;
  /** By oxygen uptake. */
  readonly uptake: number;
  /** The range that can honestly be told: in whole steps, the wider the longer. */
  readonly from: number;
  readonly to: number;
  /** Null where both equations hold. */
  readonly widened: (typeof wideningReasons)[number] | null;
}

export const marathonMetres = 42_195;

/** Nobody runs a time to the second because an equation says so: the longer a race, the wider the step. */
const steps = [
  { below: 1_200, step: 5 },
  { below: 3_600, step: 15 },
  { below: 7_200, step: 30 },
  { below: Infinity, step: 60 },
];

const stepOf = (seconds: number): number => steps.find(({ below }) => seconds < below)?.step ?? 60;

/**
 * What a race is worth at other distances: between two published equations, and wider where they stop being good.
 *
 * Sources: Riegel 1981 (3.5 to 230 minutes); Daniels and Gilbert 1979; Vickers and Vertosick 2016: for half of marathon
 * runners Riegel is ten minutes or more too fast.
 *
 * @param race of a longer race nothing is to be widened towards shorter ones.
 */
export function equalTimes(race: RunTime, rules: RunningRules['equal_times']): readonly EqualTime[] {
  const uptake = uptakeOf(race);
  return rules.distances.map((metres) => equalTime(race, { metres, uptake }, rules));
}

/** The race itself, to the second. */
const asItWas = ({ metres, seconds }: RunTime): EqualTime => ({
  metres,
  riegel: seconds,
  uptake: seconds,
  from: seconds,
  to: seconds,
  widened: null,
});

/** People type 42.2 km for a marathon: a thousandth is no other distance. */
const isAbout = (one: number, other: number): boolean => Math.abs(one - other) < one / 1000;

function equalTime(
  race: RunTime,
  { metres, uptake }: { readonly metres: number; readonly uptake: number },
  rules: RunningRules['equal_times'],
): EqualTime {
  if (metres === race.metres) return asItWas(race);
  const riegel = riegelSeconds(race, metres);
  const byUptake = secondsFor(uptake, metres);
  const quick = Math.min(riegel, byUptake);
  const late = Math.max(riegel, byUptake);
  const isMarathon = metres >= marathonMetres && race.metres < marathonMetres && !isAbout(metres, race.metres);
  const isOutside = [race.seconds, quick, late].some(
    (seconds) => seconds < rules.least_seconds || seconds > rules.most_seconds,
  );
  const widened = isMarathon ? 'marathon' : isOutside ? 'outside' : null;
  const latest = Math.max(
    isMarathon ? riegel + rules.marathon_minutes * 60 : 0,
    late * (isOutside ? 1 + rules.outside_share : 1),
  );
  const down = stepOf(quick);
  const up = stepOf(latest);
  const from = Math.floor(quick / down) * down;
  return { metres, riegel, uptake: byUptake, from, to: Math.ceil(latest / up) * up, widened };
}
