import type { Founded } from './founded.js';

// The comments here are published: `npm run compile` copies them into shared/schema/method.schema.json.

/** The kinds of training that are running. */
export const runningIds = ['slow', 'tempo', 'intervals'] as const;
export type RunningId = (typeof runningIds)[number];

/** The bands of intensity of the published position stand, from least to most. */
export const bandIds = ['very-light', 'light', 'moderate', 'vigorous', 'near-maximal'] as const;
export type BandId = (typeof bandIds)[number];

/** A part of a session that is taken at an easy pace. */
export interface EasyPart {
  /** Its usual minutes. */
  readonly minutes: number;
  /** The most that it takes of a short session, as a share of 1. */
  readonly most_share: number;
}

/** The hard part of a session, cut into bouts. */
export interface Bouts {
  /** Minutes that a bout should have; it comes out as long as makes the parts add up to the session. */
  readonly work: number;
  /** Easy minutes between two bouts. */
  readonly rest: number;
}

/** A kind of running made concrete. */
export interface RunningKind extends Founded {
  readonly id: RunningId;
  /** The pace: shares of the greatest oxygen uptake, as parts of 1. */
  readonly uptake: { readonly least: number; readonly most: number };
  /** How hard it should feel, 0 to 10. */
  readonly effort: { readonly least: number; readonly most: number };
  readonly warm_up?: EasyPart | undefined;
  readonly cool_down?: EasyPart | undefined;
  readonly bouts?: Bouts | undefined;
}

/** The lower edges of a band of intensity, as parts of 1. */
export interface IntensityBand {
  readonly id: BandId;
  /** Of the greatest oxygen uptake. */
  readonly uptake: number;
  /** Of the heart-rate reserve. */
  readonly reserve: number;
  /** Of the highest heart rate. */
  readonly highest: number;
}

/** How running becomes paces, distances and heart rates. */
export interface RunningRules {
  /** Every kind of running once. */
  readonly kinds: readonly RunningKind[];
  /** Times at other distances, and where they stop being good. */
  readonly equal_times: Founded & {
    /** Metres of the distances that are shown, shortest first. */
    readonly distances: readonly number[];
    /** Seconds of the races for which the law was found. */
    readonly least_seconds: number;
    readonly most_seconds: number;
    /** Minutes added to the slower end of a marathon that is worked out from a shorter race. */
    readonly marathon_minutes: number;
    /** What is added to the slower end where a time is outside that range, as a share of 1. */
    readonly outside_share: number;
    /** Days after which a race result is called old. */
    readonly old_days: number;
  };
  /** The pace that can be held for so many minutes is the threshold pace. */
  readonly threshold: Founded & { readonly minutes: number };
  readonly heart: Founded & {
    /** The highest heart rate by age in years: `from` less `slope` a year. */
    readonly estimates: readonly { readonly id: string; readonly from: number; readonly slope: number }[];
    /** Beats by which such an estimate is off for one person in three: from study to study. */
    readonly spread: { readonly least: number; readonly most: number };
    /** From least to most. */
    readonly bands: readonly IntensityBand[];
  };
  readonly energy: Founded & {
    /** Multiples of the energy at rest. */
    readonly cross: { readonly least: number; readonly most: number };
    readonly strength: { readonly least: number; readonly most: number };
  };
}
