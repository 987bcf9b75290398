import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
import { rowGroups } from '../../plan/scenarios/rows.js';
import { whenReached } from '../../plan/season/season-questions.js';
import { quantityName } from '../../words/quantity-names.js';
import { quantityUnit, quantityValue } from '../../words/quantity-value.js';
import { datesOf } from '../../words/season/dates.js';
import { amountIn, wantedAmount } from '../../words/sheet/formula-text.js';
import type { SeasonView } from './season-view.js';

const asked = ['minutes', 'planned', 'shares'];

/** When would I reach so much of something? */
export function reachBox(view: SeasonView): TemplateResult {
  const { words, method, desk } = view;
  const { quantity, wanted } = desk.question;
  const groups = rowGroups(method).filter(({ id }) => asked.includes(id));
  const quantities = groups.flatMap(({ rows }) =>
    rows.flatMap((row) => (row.kind === 'quantity' ? [row.quantity] : [])),
  );
  const own = method.quantities?.map(({ id }) => id) ?? [];
  return html`<div class="season-fields">
      <span class="field wide">
        <label for="season-quantity">${words.say('season.reach.quantity')}</label>
        <select
          id="season-quantity"
          @change=${({ currentTarget }: Event) => {
            if (currentTarget instanceof HTMLSelectElement)
              desk.ask({ quantity: currentTarget.value }, () => answer(view));
          }}
        >
          ${[...quantities, ...own].map(
            (id) =>
              html`<option value=${id} .selected=${live(id === quantity)}>
                ${words.capital(quantityName(words, method, id))}
              </option>`,
          )}
        </select>
      </span>
      <span class="field">
        <label for="season-wanted">${words.say('season.reach.wanted')}</label>
        <input
          id="season-wanted"
          class="typed"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          size="6"
          ${typedText(wanted)}
          @input=${beginTyping}
          @blur=${endTyping}
          @change=${(event: Event) => {
            const text = endTyping(event);
            if (text !== null) desk.ask({ wanted: text }, () => answer(view));
          }}
        />
      </span>
    </div>
    <p class="answer">${answer(view)}</p>`;
}

function answer({ words, method, plan, season, desk }: SeasonView): string {
  const { quantity, wanted } = desk.question;
  const amount = wantedAmount(wanted);
  if (amount === null || !desk.planner) return words.say('season.reach.no-number', { given: wanted });
  const target = amountIn(quantityUnit(method, quantity), amount);
  const { weeks, largest } = whenReached({ planner: desk.planner, inputs: plan.inputs, season }, quantity, target);
  const text = (value: number): string => quantityValue(words, method, { id: quantity, value });
  const [first] = weeks;
  if (first)
    return words.say('season.reach.week', {
      number: first.number,
      dates: datesOf(words).week(first.start),
      value: text(target),
      count: weeks.length,
    });
  if (!largest) return words.say('season.reach.none');
  return words.say('season.reach.never', {
    value: text(target),
    largest: text(largest.value),
    number: largest.week.number,
  });
}
