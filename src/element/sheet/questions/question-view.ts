import type { Words } from '../../../words/words.js';
import type { QuestionNeeds, Questions } from './questions.js';

/** What the templates of questions read. */
export interface QuestionView {
  readonly words: Words;
  readonly bench: QuestionNeeds;
  readonly questions: Questions;
}
