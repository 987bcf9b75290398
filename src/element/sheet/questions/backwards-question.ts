import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../../parts/live.js';
import type { Solution } from '../../../sheet/explore/solutions.js';
import { quantityValue } from '../../../words/quantity-value.js';
import { backwardsLines } from '../../../words/sheet/backwards-lines.js';
import { requestOf } from '../../../plan/scenarios/input-request.js';
import type { QuestionView } from './question-view.js';
import { inputSelect, quantitySelect } from './question-selects.js';
import type { Backwards } from './questions.js';

/** "Strength, minutes, is to be 90, by moving hours a week": where it is so, or what comes nearest. */
export function backwardsQuestion(view: QuestionView): TemplateResult {
  const { words, questions } = view;
  const answer = questions.backwards;
  const isWrong = answer !== null && 'text' in answer;
  return html`<div class="question-fields">
      ${quantitySelect(view, { id: 'back-quantity', label: words.say('sheet.quantity') })}
      <span class="question-field">
        <label for="back-wanted">${words.say('sheet.wanted')}</label>
        <input
          id="back-wanted"
          class="typed"
          type="text"
          autocomplete="off"
          aria-describedby="back-hint"
          aria-invalid=${isWrong ? 'true' : 'false'}
          .value=${live(questions.wanted)}
          @input=${({ currentTarget }: Event) => {
            if (currentTarget instanceof HTMLInputElement) questions.ask({ wanted: currentTarget.value });
          }}
        />
      </span>
      ${inputSelect(view, { id: 'back-input', label: words.say('sheet.by-moving') })}
    </div>
    <p id="back-hint" class=${isWrong ? 'hint wrong' : 'hint'}>
      ${isWrong ? words.say('sheet.wanted.wrong', { text: answer.text }) : words.say('sheet.wanted.hint')}
    </p>
    <div class="answer-box" role="group" aria-label=${words.say('sheet.ask.backwards')}>
      ${answer && !('text' in answer) ? answered(view, answer) : nothing}
    </div>`;
}

function answered(
  view: QuestionView,
  { target, input, result }: Exclude<Backwards, { readonly text: string }>,
): TemplateResult {
  const { words, bench, questions } = view;
  const lines = backwardsLines(words, bench.method, { input, quantity: questions.quantity, target, result });
  const places = result.solutions.length > 0 ? result.solutions.map(plainPlace) : [result.nearest?.at];
  return html`${lines.map((line, index) => html`<p class=${index === 0 ? 'lead' : 'quiet'}>${line}</p>`)}
    <p>${places.map((place) => (place === undefined ? nothing : useButton(view, input.id, place)))}</p>`;
}

/** Of a stretch the end that belongs to it. */
function plainPlace({ from, to, includesFrom, includesTo }: Solution): number {
  if (includesFrom) return from;
  return includesTo ? to : (from + to) / 2;
}

function useButton({ words, bench }: QuestionView, input: string, value: number): TemplateResult | typeof nothing {
  const request = requestOf(input, value);
  if (!request) return nothing;
  return html`<button
    type="button"
    class="act"
    @click=${() => {
      bench.set(bench.store.onShow.id, request);
    }}
  >
    ${words.say('sheet.use', { place: quantityValue(words, bench.method, { id: input, value }) })}
  </button>`;
}
