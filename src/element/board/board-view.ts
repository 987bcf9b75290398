import type { PlanWeek } from '../../plan/week/document.js';
import type { FullView } from '../controllers/late-panel-controller.js';
import type { Board } from './board.js';

/** All that the templates of the board read. */
export interface BoardView extends FullView {
  readonly board: Board;
  readonly week: PlanWeek;
}
