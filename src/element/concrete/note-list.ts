import { html, nothing, type TemplateResult } from 'lit';

interface Note {
  readonly level: 'note' | 'caution';
  readonly text: string;
}

/** What there is to know, and what to mind. */
export function noteList(notes: readonly Note[]): TemplateResult | typeof nothing {
  return notes.length === 0
    ? nothing
    : html`<ul class="concrete-notes">
        ${notes.map(({ level, text }) => html`<li data-level=${level}>${text}</li>`)}
      </ul>`;
}
