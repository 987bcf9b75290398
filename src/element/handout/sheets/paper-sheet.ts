import { html, type TemplateResult } from 'lit';
import { concretePlan } from '../../../plan/handout/concrete-plan.js';
import { weekText } from '../../../words/handout/week-text.js';
import { today } from '../../today.js';
import { isWeek } from '../handout-fields.js';
import type { HandoutView } from '../handout-view.js';
import type { SheetGround } from './around-sheet.js';
import { logoPieces } from './logo.js';
import { seasonSheet } from './season-sheet.js';
import { weekSheet } from './week-sheet.js';

/** What is printed, and shown before. */
export function paperSheet(view: HandoutView): TemplateResult {
  const { words, method, plan, told, weeks, desk, host } = view;
  const logo = logoPieces(host, () => {
    desk.update();
  });
  const ground: SheetGround = { words, method, texts: desk.texts, logo, today: today() };
  const sheet =
    isWeek(view) || !plan.season
      ? weekSheet(ground, weekText(words, method, { week: weeks(desk.choices.start), told }))
      : seasonSheet(ground, { season: plan.season, plan: concretePlan(method, plan, told) });
  return html`<article class="paper" data-ink=${desk.choices.ink}>${sheet}</article>`;
}
