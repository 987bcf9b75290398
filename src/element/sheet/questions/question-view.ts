import type { SheetView } from '../sheet-view.js';
import type { Questions } from './questions.js';

/** What the templates of questions read. */
export interface QuestionView extends SheetView {
  readonly questions: Questions;
}
