import type { PlannedWeek, WeekPlanner } from '../../plan/record/planned-week.js';
import type { DoneSession } from '../../training/record/done-session.js';
import type { MatchedWeek } from '../../training/record/match-sessions.js';
import type { WeekWishes } from '../../plan/week/wishes.js';
import type { FullView } from '../controllers/late-panel-controller.js';
import type { FieldDesk } from '../fields/field-view.js';
import type { TableDesk } from './table-desk.js';
import type { Values } from '../../words/phrases.js';

/** What the templates of the record read of it, and what people can do; a field gives it the whole record anew. */
export interface RecordDesk extends FieldDesk<readonly DoneSession[]> {
  readonly sessions: readonly DoneSession[];
  /** The Monday of the week on show. */
  readonly start: string;
  readonly today: string;
  /** What a listener is told. */
  readonly message: string;
  /** True where the last act would have made the record longer than it can be. */
  readonly isFull: boolean;
  /** False where the page shows no days. */
  readonly canLay: boolean;
  /** The table that is being brought in. */
  readonly tables: TableDesk;
  /** What could not be copied, for copying by hand. */
  readonly notCopied: string | null;
  leave(text: string | null): void;
  /** What was typed into a field and is no value of it no longer counts. */
  forget(id: string): void;
  show(start: string): void;
  say(key: string, values?: Values): void;
  /** Lays the week again, with what was done where it was done. */
  lay(wishes: WeekWishes): void;
  isOpen(box: string): boolean;
  toggle(box: string, isOpen: boolean): void;
  /** Where the focus goes once the record is rendered. */
  focusOn(selector: string): void;
}

/** All that the templates of the record read. */
export interface RecordView extends FullView {
  readonly desk: RecordDesk;
  readonly weeks: WeekPlanner;
  readonly week: PlannedWeek;
  /** The week on show, held against what was done in it. */
  readonly matched: MatchedWeek;
}
