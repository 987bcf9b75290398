import { html, type TemplateResult } from 'lit';
import { checksLimits } from '../../plan/checks/wishes.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryName } from '../../words/category-name.js';
import { amountField } from '../fields/amount-field.js';
import type { ChecksView } from './checks-view.js';
import { weeksField } from './weeks-field.js';

/** What a runner may tell in a few seconds. */
export function runnerInputs(view: ChecksView): TemplateResult {
  const { words, desk } = view;
  const { request } = desk;
  return html`<div class="concrete-inputs">
    ${amountField(view, {
      id: 'checks-age',
      label: words.say('checks.input.age'),
      value: request.age ?? null,
      set: (age) => ({ ...request, age }),
    })}
    ${amountField(view, {
      id: 'checks-hours',
      label: words.say('checks.input.hours'),
      value: request.hoursBefore ?? null,
      isHours: true,
      set: (hoursBefore) => ({ ...request, hoursBefore }),
    })}
    ${amountField(view, {
      id: 'checks-run',
      label: words.say('checks.input.run'),
      value: request.longestRun ?? null,
      set: (longestRun) => ({ ...request, longestRun }),
    })}
  </div>`;
}

/** How hard sessions feel, and the loads of the runner's own weeks. */
export function loadInputs(view: ChecksView): TemplateResult {
  const { words, method, desk, load } = view;
  const { request } = desk;
  const { efforts = {} } = request;
  return html`${weeksField(view)}
    <p class="hint">${words.say('checks.efforts')}</p>
    <div class="concrete-inputs">
      ${categoryIds.map((id) =>
        amountField(view, {
          id: `checks-effort-${id}`,
          label: words.say('checks.input.effort', { kind: categoryName(words, method, id) }),
          value: load.efforts[id],
          range: checksLimits.effort,
          set: (effort) => {
            const { [id]: _, ...others } = efforts;
            return { ...request, efforts: effort === null ? others : { ...others, [id]: effort } };
          },
        }),
      )}
    </div>
    <button
      type="button"
      class="act"
      aria-disabled=${Object.keys(efforts).length === 0 ? 'true' : 'false'}
      @click=${() => {
        if (Object.keys(efforts).length > 0) desk.act({ ...request, efforts: {} });
      }}
    >
      ${words.say('checks.efforts.back')}
    </button>`;
}
