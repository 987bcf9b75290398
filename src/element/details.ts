// What is fetched only when somebody asks why, or something is wrong.
export { problemBox, sayProblem } from './problems.js';
export { why } from './split/why.js';
export { whyStyles as styles } from './split/why.styles.js';
