// What is fetched only when somebody asks why, or something is wrong.
export { detailsStyles as styles } from './details.styles.js';
export { oncePerCause, problemBox, sayProblem } from './problems.js';
export { cautionLines } from './parts/caution-lines.js';
export { derivation } from './parts/derivation.js';
export { noteLines } from './split/note-lines.js';
export { why } from './split/why.js';
