import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { tallyOf } from './content-tally.js';
import { fieldNote } from '../fields/fields.js';
import { handedOver } from './acts.js';
import type { HandoutView } from './handout-view.js';

/** When sessions are in a calendar. */
export function calendarBox(view: HandoutView): TemplateResult {
  const { words, desk } = view;
  const { isTimed } = desk.choices;
  return html`<p class="hint">${words.say('handout.calendar.about')}</p>
    <div class="concrete-inputs">
      <label class="tick-line"
        ><input
          type="checkbox"
          .checked=${live(isTimed)}
          @change=${() => {
            desk.act({ isTimed: !isTimed });
          }}
        />
        ${words.say('handout.calendar.timed')}</label
      >
      ${isTimed ? html`${timeField(view, 'usual')} ${timeField(view, 'early')}` : ''}
    </div>`;
}

function timeField(view: HandoutView, name: 'usual' | 'early'): TemplateResult {
  const { words, desk } = view;
  const id = `handout-${name}`;
  const label = words.say(`handout.calendar.${name}`);
  return html`<div class="field" part="field">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      class="typed date"
      type="time"
      aria-describedby="${id}-hint"
      aria-invalid=${desk.drafts.has(id) ? 'true' : 'false'}
      .value=${live(desk.choices[name])}
      @change=${({ currentTarget }: Event) => {
        if (!(currentTarget instanceof HTMLInputElement)) return;
        const text = currentTarget.value;
        desk.act({ [name]: text }, { id, label, text });
      }}
    />
    ${fieldNote(view, id)}
  </div>`;
}

/** Opens a file from a disk; it may be dropped on the planner too. */
export function openBox({ words, desk }: HandoutView): TemplateResult {
  return html`<p class="hint">${words.say('handout.open.about')}</p>
    <label class="file-line"
      >${words.say('handout.open.file')}
      <input
        type="file"
        accept=".json,application/json"
        @change=${({ currentTarget }: Event) => {
          if (!(currentTarget instanceof HTMLInputElement)) return;
          const [file] = currentTarget.files ?? [];
          // The same file may be opened again.
          currentTarget.value = '';
          if (file) void desk.openFile(file);
        }}
      />
    </label>`;
}

/** What a file or a link takes along. */
export function contentBox(view: HandoutView): TemplateResult {
  const { words, desk } = view;
  const { isBare } = desk.choices;
  const file = handedOver(view);
  return html`<ul class="plain-list">
      ${file ? tallyOf(words, file).map((line) => html`<li>${line}</li>`) : ''}
    </ul>
    <label class="tick-line"
      ><input
        type="checkbox"
        .checked=${live(isBare)}
        @change=${() => {
          desk.act({ isBare: !isBare });
        }}
      />
      ${words.say('handout.content.bare')}</label
    >
    <p class="hint">${words.say('handout.content.never')}</p>`;
}
