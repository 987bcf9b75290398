import type { HeartBand } from '../../training/running/heart-rate.js';
import type { EqualTime } from '../../training/running/equal-times.js';
import type { RunPart } from '../../training/running/run-session.js';
import type { Span } from '../../training/running/span.js';
import type { BandId, RunningId } from '../../training/method/running-rules.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { RunningWishes } from './wishes.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

export const basisKinds = ['race', 'threshold'] as const;

/** What paces are worked out from. */
export interface RunningBasis {
  readonly from: (typeof basisKinds)[number];
  readonly metres: number;
  readonly seconds: number;
  /** The share of the greatest oxygen uptake that is held for so long, as a part of 1. */
  readonly held: number;
  /** The greatest oxygen uptake that it implies, in millilitres a kilogram a minute. */
  readonly uptake: number;
}

/** How a kind of running is run. */
export interface RunningGuide {
  readonly category: RunningId;
  /** How hard it should feel, 0 to 10. */
  readonly effort: Span;
  /** Seconds a kilometre, the faster first; null where no pace is known. */
  readonly pace: Span | null;
  /** Beats a minute; null where the highest heart rate is not known. */
  readonly heart: Span | null;
  /** The bands of the position stand that these are in; null where `heart` is. */
  readonly bands: { readonly from: BandId; readonly to: BandId } | null;
}

/** A session made concrete. */
export interface ConcreteSession {
  readonly category: CategoryId;
  readonly minutes: number;
  /** 0 for Monday to 6 for Sunday; null while sessions are not laid on days. */
  readonly day: number | null;
  /** What a run is made of; empty for cross-training and strength. */
  readonly parts: readonly RunPart[];
  /** Null where no pace is known, and for what is no run. */
  readonly metres: Span | null;
  /** Kilocalories, a rough estimate; null where weight or pace is not known. */
  readonly energy: Span | null;
}

export const highestSources = ['measured', 'age'] as const;

/** The highest heart rate, in beats a minute. */
export interface HighestHeart {
  readonly beats: number;
  readonly from: (typeof highestSources)[number];
  /** What the method's equations give for the age; empty where none is told. */
  readonly estimates: readonly { readonly id: string; readonly beats: number }[];
}

/** What there is to say of running. */
export const runningNoticeCodes = [
  'old-race',
  'race-outside',
  'slow-pace',
  'heart-below-estimate',
  'under-18',
] as const;
export type RunningNoticeCode = (typeof runningNoticeCodes)[number];

export interface RunningNotice {
  readonly code: RunningNoticeCode;
  /** Good to know, or mind your health. */
  readonly level: 'note' | 'caution';
  readonly values: Readonly<Record<string, number>>;
}

/** The running of a week made concrete. */
export interface PlanRunning {
  readonly wishes: RunningWishes;
  /** Null where no pace is known. */
  readonly basis: RunningBasis | null;
  readonly guides: readonly RunningGuide[];
  /** What the race or the threshold pace is worth at other distances; empty where no pace is known. */
  readonly equalTimes: readonly EqualTime[];
  /** Null where neither it nor the age is told. */
  readonly highest: HighestHeart | null;
  /** The bands of the position stand; empty where the highest heart rate is not known. */
  readonly bands: readonly HeartBand[];
  /** Every session of the week. */
  readonly sessions: readonly ConcreteSession[];
  /** Metres of all runs of the week; null where no pace is known. */
  readonly metres: Span | null;
  /** Kilocalories of all sessions; null where one of them has none. */
  readonly energy: Span | null;
  readonly notices: readonly RunningNotice[];
}
