import { html, nothing, type TemplateResult } from 'lit';
import type { HandoutTexts } from '../../../plan/file/document.js';
import type { Method } from '../../../training/method/document.js';
import { datesOf } from '../../../words/season/dates.js';
import { usualCautions } from '../../../words/usual-cautions.js';
import type { Words } from '../../../words/words.js';

/** What every sheet is made with. */
export interface SheetGround {
  readonly words: Words;
  readonly method: Method;
  readonly texts: HandoutTexts;
  /** Whose page it is, in pieces: pictures, and a name. */
  readonly logo: readonly Element[];
  /** ISO date of the day it is handed over. */
  readonly today: string;
}

interface SheetHead {
  /** In small type above the title; empty for nothing. */
  readonly over: string;
  readonly title: string;
  readonly lead: string;
}

/** The first page of a handout: whom it is for, what it is, its content, the cautions, and whom to ask. */
export function aroundSheet(
  { words, method, texts: { runner, contact, note }, logo, today }: SheetGround,
  { over, title, lead }: SheetHead,
  content: TemplateResult,
): TemplateResult {
  const above = [runner === '' ? '' : words.say('handout.for', { name: runner }), over].filter((text) => text !== '');
  return html`<section class="page">
    <header>
      ${above.length === 0 ? nothing : html`<p class="p-over">${above.map((text) => html`<span>${text}</span>`)}</p>`}
      <h3>${title}</h3>
      <p class="p-lead">${lead}</p>
      ${logo.length === 0 ? nothing : html`<div class="p-logo">${logo}</div>`}
    </header>
    ${content} ${note === '' ? nothing : html`<p class="p-note">${note}</p>`}
    <div>
      <h4>${words.say('caution.title')}</h4>
      <ul class="p-cautions">
        ${usualCautions(words, method).map((text) => html`<li>${text}</li>`)}
      </ul>
    </div>
    <footer>
      <p>${contact === '' ? words.say('caution.aid') : words.say('handout.contact', { contact })}</p>
      <p>${words.say('handout.made', { date: datesOf(words).full(today) })}</p>
    </footer>
  </section>`;
}
