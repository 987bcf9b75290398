import type { Outcome } from '../../problem.js';
import type { Sheet } from '../../sheet/sheet.js';
import type { Method } from '../../training/method/document.js';
import type { PlanInputs } from '../document.js';
import type { PlanSeason } from './document.js';
import type { SeasonGround } from './season-ground.js';
import type { SeasonWishes } from './wishes.js';

/** What was asked of a season. */
export interface SeasonAsked {
  readonly inputs: PlanInputs;
  /** Null where no season is asked for. */
  readonly season: SeasonWishes | null;
}

/** Carries weeks through a season for a planner; fetched where a page asks for it. */
export interface SeasonMaker {
  /** Checks what a request says of the season, and fills in the method's usual numbers. */
  readonly read: (given: unknown, ground: SeasonGround) => Outcome<SeasonWishes>;
  /** What the season changes in the week on show. */
  readonly values: (method: Method, asked: SeasonAsked) => Readonly<Record<string, number>>;
  /** Every week of the season, by the sheet that computes a week. */
  readonly carry: (made: { readonly method: Method; readonly sheet: Sheet }, asked: SeasonAsked) => PlanSeason | null;
}
