import type { Card } from '../../plan/week/cards.js';
import type { PlanWeek } from '../../plan/week/document.js';
import type { WeekWishes } from '../../plan/week/wishes.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { FullView } from '../controllers/late-panel-controller.js';
import type { DayDrafts } from './day-drafts.js';

/** A card that is being moved, by pointer or by keys. */
export interface Carrying {
  readonly card: Card;
  /** The day that it is over. */
  readonly day: number;
}

/** A week laid again, to be taken or left. */
export interface Proposal {
  readonly wishes: WeekWishes;
  /** Which day fell out, or which session was missed. */
  readonly about: { readonly day: number; readonly category: CategoryId | null };
}

/** A session or a day that a person has opened. */
export interface Opened {
  readonly category: CategoryId | null;
  readonly day: number;
}

/** What the templates of the board read of it, and what people can do. */
export interface BoardDesk {
  carrying: Carrying | null;
  opened: Opened | null;
  proposal: Proposal | null;
  /** What a listener is told. */
  message: string;
  readonly drafts: DayDrafts;
  /** Makes a person's wishes the planner's. */
  act(wishes: WeekWishes): void;
  /** Opens a session or a day, or closes it. */
  open(opened: Opened | null): void;
  /** Shows a week laid again, to be taken or left. */
  propose(proposal: Proposal): void;
  /** Tells a listener something. */
  say(message: string): void;
  update(): void;
  /** What the week would be with other wishes, by the plan on show. */
  tryOut(wishes: WeekWishes): PlanWeek | null;
  /** Where the focus goes once the board is rendered. */
  focusOn(selector: string): void;
  /** The card that an element stands for. */
  cardByKey(key: string): Card | undefined;
}

/** All that the templates of the board read. */
export interface BoardView extends FullView {
  readonly board: BoardDesk;
  readonly week: PlanWeek;
}
