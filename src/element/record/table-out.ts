import { html, nothing, type TemplateResult } from 'lit';
import { writeSessions } from '../../exchange/record/write-sessions.js';
import { byCategory } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import { fileName, saveAs } from '../parts/save-as.js';
import { copied } from '../parts/copied.js';
import type { RecordView } from './record-view.js';

/** The record as a table for other programs, which this planner reads again. */
export function tableOut(view: RecordView): TemplateResult {
  const { words, desk } = view;
  if (desk.sessions.length === 0) return html`<p class="quiet">${words.say('record.nothing-yet')}</p>`;
  return html`<p>
      <button
        type="button"
        class="act"
        @click=${() => {
          const name = fileName([words.say('record.title'), desk.today], 'csv');
          saveAs({ name, type: 'text/csv', text: `\uFEFF${textOf(view)}` });
          desk.say('handout.saved', { name });
        }}
      >
        ${words.say('handout.do.table')}
      </button>
      <button type="button" class="act" @click=${() => void copy(view)}>${words.say('record.out.copy')}</button>
    </p>
    ${
      desk.notCopied === null
        ? nothing
        : html`<textarea
            class="typed by-hand"
            readonly
            rows="4"
            aria-label=${words.say('handout.by-hand')}
            .value=${desk.notCopied}
          ></textarea>`
    }`;
}

async function copy(view: RecordView): Promise<void> {
  const text = textOf(view);
  const isCopied = await copied({ 'text/plain': text });
  view.desk.leave(isCopied ? null : text);
  view.desk.say(isCopied ? 'sheet.copied-table' : 'sheet.not-copied');
}

function textOf({ words, method, desk }: RecordView): string {
  const head = (field: string): string => words.say(`record.in.field.${field}`);
  const titles = { date: head('date'), category: head('category'), minutes: head('minutes'), effort: head('effort') };
  const kinds = byCategory((id) => categoryTitle(words, method, id));
  return writeSessions(desk.sessions, titles, kinds);
}
