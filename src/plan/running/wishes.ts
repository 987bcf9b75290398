// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** Units of distance that people count in. */
export const distanceUnits = ['km', 'mile'] as const;
export type DistanceUnit = (typeof distanceUnits)[number];

/** A race that was run. */
export interface RaceResult {
  readonly metres: number;
  readonly seconds: number;
  /** The day of the race, as an ISO date; null where it is not told. */
  readonly date: string | null;
}

/** What is known of a runner's pace and heart. */
export interface RunningWishes {
  /** Null where there is none; of both, the race counts. */
  readonly race: RaceResult | null;
  /** The pace that can be held for about an hour, in seconds a kilometre; null where it is not known. */
  readonly thresholdPace: number | null;
  readonly unit: DistanceUnit;
  /** In years. */
  readonly age: number | null;
  /** The highest heart rate as measured, in beats a minute; estimated from the age where it is null. */
  readonly highestHeart: number | null;
  /** In beats a minute. */
  readonly restingHeart: number | null;
  /** In kilograms; energy is estimated where it is told. */
  readonly weight: number | null;
  /** The day it is now, as an ISO date: a race long ago is told; null where it is not known. */
  readonly today: string | null;
}

/** What is told of a runner; all of it may be left out. */
export type RunningRequest = {
  readonly [K in Exclude<keyof RunningWishes, 'race'>]?: RunningWishes[K] | undefined;
} & {
  readonly race?:
    (Pick<RaceResult, 'metres' | 'seconds'> & { readonly date?: string | null | undefined }) | null | undefined;
};

/** What may be told, ends included; years, beats a minute, kilograms, metres, seconds a kilometre. */
export const runningLimits = {
  metres: { least: 800, most: 100_000 },
  thresholdPace: { least: 150, most: 720 },
  age: { least: 5, most: 110 },
  highestHeart: { least: 100, most: 240 },
  restingHeart: { least: 25, most: 120 },
  weight: { least: 20, most: 300 },
  /** Metres a minute, which limit the time of a race: slower than a walk or faster than any record is a slip of the finger. */
  speed: { least: 60, most: 480 },
} as const;
