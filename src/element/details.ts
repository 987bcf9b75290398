// What is fetched only when somebody asks why, or something is wrong.
export { detailsStyles as styles } from './details.styles.js';
export { noticesWithCauses as noticeLines } from '../words/notices-with-causes.js';
export { oncePerCause, problemBox, sayProblem } from './problems.js';
export { derivation } from './parts/derivation.js';
export { why } from './split/why.js';
