import { html, type TemplateResult } from 'lit';
import type { Problem } from '../../problem.js';
import { fieldNote } from '../fields/fields.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
import { notANumber } from '../inputs/not-a-number.js';
import type { ChecksView } from './checks-view.js';

const id = 'checks-weeks';

/** The loads of the runner's own weeks, a line each. */
export function weeksField(view: ChecksView): TemplateResult {
  const { words, desk } = view;
  const { request } = desk;
  const label = words.say('checks.input.weeks');
  return html`<div class="field weeks" part="field">
    <label for=${id}>${label}</label>
    <textarea
      id=${id}
      class="typed"
      rows="4"
      autocomplete="off"
      spellcheck="false"
      aria-describedby="${id}-about ${id}-hint"
      aria-invalid=${desk.drafts.has(id) ? 'true' : 'false'}
      ${typedText(desk.drafts.get(id)?.text ?? written(request.weeks ?? []))}
      @input=${beginTyping}
      @blur=${endTyping}
      @change=${(event: Event) => {
        const text = endTyping(event);
        if (text === null) return;
        const read = readWeeks(label, text);
        if ('code' in read) desk.refuse(read, { id, label, text, entry: read.value });
        else desk.act({ ...request, weeks: read }, { id, label, text });
      }}
    ></textarea>
    <p id="${id}-about" class="hint">${words.say('checks.input.weeks.hint')}</p>
    ${fieldNote(view, id)}
  </div>`;
}

const written = (weeks: readonly (readonly number[])[]): string => weeks.map((days) => days.join(' ')).join('\n');

interface Refused extends Problem {
  readonly value: string;
}

/** Whole numbers with spaces or semicolons between them; the first entry that is none is told. */
function readWeeks(label: string, text: string): readonly (readonly number[])[] | Refused {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const weeks = lines.map((line) => line.split(/[\s;]+/).filter((entry) => entry !== ''));
  // A comma could stand for anything here, and loads are whole numbers.
  const numbers = weeks.map((entries) => entries.map((entry) => (/^\d+$/.test(entry) ? Number(entry) : null)));
  const faulty = weeks.flat()[numbers.flat().indexOf(null)];
  if (faulty !== undefined) return { ...notANumber(label, faulty), value: faulty };
  return numbers.map((days) => days.filter((load) => load !== null));
}
