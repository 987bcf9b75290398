import type { ChecksMaker } from '../checks/checks-maker.js';
import type { SeasonMaker } from '../season/season-maker.js';
import type { WeekMaker } from '../week/week-maker.js';

/** What scenarios can be taught beyond dividing a week: days, a season, checks. */
export interface Makers {
  readonly week?: WeekMaker;
  readonly season?: SeasonMaker;
  readonly checks?: ChecksMaker;
}

/** Whoever keeps scenarios, and can be taught. */
export interface Pupil {
  teach(makers: Makers): void;
}
