import { writeSheetText } from '../../exchange/sheet-link.js';
import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { Outcome } from '../../problem.js';
import { linkWith, type LinkPlace } from './page-link.js';

/** The address of a page with a what-if sheet in its fragment, or that the sheet is too long for a link. */
export const linkTo = (sheet: ScenarioSheet, place: LinkPlace): Promise<Outcome<string>> =>
  linkWith({ version: 1, text: writeSheetText(sheet) }, place);
