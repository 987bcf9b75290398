// What is fetched only when somebody opens a question: the questions themselves, what answers them, and the chart.
import { chartStyles } from '../../chart/chart.styles.js';
import { backwardsQuestion } from './backwards-question.js';
import { influenceQuestion } from './influence-question.js';
import { sweepQuestion } from './sweep-question.js';

export { Questions } from './questions.js';
export const styles = [chartStyles];
/** How each question is asked, by its name. */
export const boxes = { sweep: sweepQuestion, backwards: backwardsQuestion, influence: influenceQuestion };
