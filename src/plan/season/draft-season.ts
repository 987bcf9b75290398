import type { Sheet } from '../../sheet/sheet.js';
import type { Method } from '../../training/method/document.js';
import type { PhaseLengths } from '../../training/season/phase-weeks.js';
import type { HoursFrame, WeekHours } from '../../training/season/season-hours.js';
import type { CalendarWeek } from '../../training/season/season-weeks.js';
import type { FiguresAsked, FiguresSource, WeekFigures } from './week-figures.js';
import type { ByHandWeek, SeasonWishes } from './wishes.js';

/** What a season is worked out with. */
export interface SeasonTools {
  readonly method: Method;
  readonly sheet: Sheet;
  readonly source: FiguresSource;
}

/** A week of a season while it is being worked out. */
export interface DraftWeek {
  readonly calendar: CalendarWeek;
  readonly hours: WeekHours;
  readonly byHand: ByHandWeek | null;
  /** Minutes of the longest run of the weeks before it; 0 where none is known. */
  readonly longestBefore: number;
  readonly asked: FiguresAsked;
  readonly figures: WeekFigures;
}

/** A season while it is being worked out. */
export interface DraftSeason {
  readonly tools: SeasonTools;
  readonly wishes: SeasonWishes;
  readonly lengths: PhaseLengths;
  /** What the hours of each week follow from. */
  readonly frames: readonly HoursFrame[];
  readonly weeks: readonly DraftWeek[];
}
