import { html, nothing, type TemplateResult } from 'lit';
import { mergeDone } from '../../plan/record/acts.js';
import type { Problem } from '../../problem.js';
import { recordLimits } from '../../training/record/done-session.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
import { importMapping } from './import-mapping.js';
import { importResult } from './import-result.js';
import type { RecordView } from './record-view.js';
import { vocabularyOf } from './vocabulary.js';

/** Brings sessions in from a table: what it shows is what it understood, line by line, before anything is taken over. */
export function importBox(view: RecordView): TemplateResult {
  const { words, method, desk } = view;
  const { tables } = desk;
  const vocabulary = (): ReturnType<typeof vocabularyOf> => vocabularyOf(words, method);
  return html`<p class="hint" id="record-paste-about">${words.say('record.in.about')}</p>
    <label for="record-paste">${words.say('record.in.paste')}</label>
    <textarea
      id="record-paste"
      class="typed by-hand"
      rows="4"
      autocomplete="off"
      spellcheck="false"
      aria-describedby="record-paste-about"
      ${typedText(tables.text)}
      @input=${beginTyping}
      @blur=${endTyping}
      @paste=${readPasted}
      @change=${(event: Event) => {
        const text = endTyping(event);
        if (text !== null) tables.take(text, vocabulary());
      }}
    ></textarea>
    <label class="file-line"
      >${words.say('record.in.file')}
      <input
        type="file"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        @change=${({ currentTarget }: Event) => {
          if (!(currentTarget instanceof HTMLInputElement)) return;
          const [file] = currentTarget.files ?? [];
          currentTarget.value = '';
          if (file) void tables.takeFile(file, vocabulary());
        }}
      />
    </label>
    <div role="status">
      ${tables.problems.map((problem) => html`<p class="wrong">${tableProblem(view, problem)}</p>`)}
    </div>
    ${tables.sessions ? html`${importMapping(view)} ${importResult(view)} ${takeOver(view)}` : nothing}`;
}

/** What is wrong with the table as a whole. */
function tableProblem({ words, details }: RecordView, problem: Problem): string {
  const most = { most: Number(problem.allowed['most']) };
  if (problem.code === 'missing') return words.say('record.in.nothing');
  if (problem.code !== 'too-long') return details.sayProblem(words, problem);
  if (problem.path === 'rows') return words.say('record.in.too-many-lines', most);
  return words.say(problem.path === 'columns' ? 'record.in.too-many-columns' : 'record.in.too-long', most);
}

/** What is pasted is meant to be read: nobody has to leave the field first. The text is there after the event. */
function readPasted({ currentTarget }: Event): void {
  setTimeout(() => currentTarget?.dispatchEvent(new Event('change')));
}

/** Takes over what was understood and is not there yet. */
function takeOver({ words, desk }: RecordView): TemplateResult {
  const { tables } = desk;
  const merged = mergeDone(
    desk.sessions,
    (tables.sessions?.read ?? []).map(({ session }) => session),
  );
  const isTooMany = merged.record.length > recordLimits.sessions;
  const isPossible = merged.added > 0 && !isTooMany;
  return html`<p>
    <button
      type="button"
      class="act"
      aria-disabled=${isPossible ? 'false' : 'true'}
      @click=${() => {
        if (!isPossible) return;
        desk.act(merged.record);
        tables.clear();
        desk.say('record.in.taken', { count: merged.added });
        desk.focusOn('#record-title');
      }}
    >
      ${words.say('record.in.take', { count: merged.added })}
    </button>
    ${merged.known > 0 ? html`<span class="quiet">${words.say('record.in.known', { count: merged.known })}</span>` : nothing}
    ${isTooMany ? html`<span class="wrong">${words.say('record.in.too-many', { most: recordLimits.sessions })}</span>` : nothing}
  </p>`;
}
