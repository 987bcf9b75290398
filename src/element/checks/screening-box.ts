import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import type { ChecksRequest } from '../../plan/checks/wishes.js';
import { checkRules } from '../../plan/checks/checks-ground.js';
import { answerIds, screen, type AnswerId } from '../../training/checks/screening.js';
import { screeningLines } from '../../words/checks/screening-text.js';
import { reasonOf } from '../../words/reason.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';
import { reasonList } from '../concrete/reason-list.js';
import { answer, answersOf, forgetAnswers } from './answers.js';

/** The questions before the start, and what the answers lead to. */
export function screeningBox(view: ConcreteView<ChecksRequest>): TemplateResult {
  const { words, method, desk } = view;
  const answers = answersOf(desk);
  const { stops } = screen(answers);
  const found = answers.length === 0 ? html`` : advice(view, answers);
  return html`${stops ? found : html``}
    <fieldset class="answers">
      <legend>${words.say('screening.ask')}</legend>
      ${answerIds.map((id) => question(view, id, answers.includes(id)))}
    </fieldset>
    ${stops ? html`` : found}
    <details>
      <summary>${words.say('checks.source')}</summary>
      ${reasonList([reasonOf(words, checkRules(method).screening)])}
    </details>`;
}

function question({ words, desk }: ConcreteView<ChecksRequest>, id: AnswerId, isSo: boolean): TemplateResult {
  return html`<label>
    <input
      type="checkbox"
      .checked=${live(isSo)}
      @change=${({ currentTarget }: Event) => {
        if (currentTarget instanceof HTMLInputElement) answer(desk, id, currentTarget.checked);
      }}
    />
    <span>${words.say(`screening.${id}`)}</span>
  </label>`;
}

/** Read out as soon as it is there. */
function advice({ words, method, desk }: ConcreteView<ChecksRequest>, answers: readonly AnswerId[]): TemplateResult {
  const screening = screen(answers);
  return html`<div
      class="advice"
      role="alert"
      data-advice=${screening.advice}
      ?data-mind=${screening.cautions.length > 0}
    >
      ${screeningLines(words, method, screening).map((line) => html`<p>${line}</p>`)}
    </div>
    <button
      type="button"
      class="act"
      @click=${({ currentTarget }: Event) => {
        // The button goes with the answers.
        if (currentTarget instanceof Element) currentTarget.closest('details')?.querySelector('summary')?.focus();
        forgetAnswers(desk);
      }}
    >
      ${words.say('screening.forget')}
    </button>`;
}
