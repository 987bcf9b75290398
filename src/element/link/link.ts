// What is fetched only where a sheet is to be read from a link, or written into one.
export { readSheetText } from '../../exchange/sheet-link.js';
export { linkTo, sheetTextIn } from './sheet-link.js';
