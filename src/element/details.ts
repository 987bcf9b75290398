// What is fetched only when somebody asks why, or something is wrong.
export { problemBox } from './problems.js';
export { why } from './split/why.js';
export { problemSentence } from '../words/problem-sentence.js';
