import type { SheetModel } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';
import type { DayReading, WeekAsked } from '../week/week-maker.js';

/** Brings checks to a sheet, so that a what-if shows where one turns; fetched where a page asks for them. */
export interface ChecksMaker {
  /** What the days of a laid week say, for whoever lays it. */
  readonly reading: (method: Method) => DayReading;
  /** The model of a sheet with what its sessions say and every check that can be made of it. */
  readonly extend: (method: Method, model: SheetModel, asked: Pick<WeekAsked, 'picks'>) => SheetModel;
}
