// What is fetched only where a plan is to be read from a link, or written into one.
export { readLink } from './read-link.js';
export { linkWith } from './page-link.js';
export { linkTo } from './sheet-link.js';
