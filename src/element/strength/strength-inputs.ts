import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { equipmentIds, type EquipmentId } from '../../training/method/strength-rules.js';
import { strengthLimits } from '../../plan/strength/wishes.js';
import { numberField } from '../fields/fields.js';
import type { StrengthView } from './strength-view.js';

/** What there is to train with, and how many minutes. */
export function strengthInputs(view: StrengthView): TemplateResult {
  return html`<div class="concrete-inputs">${equipmentField(view)} ${minutesField(view)}</div>`;
}

function equipmentField({ words, strength, desk }: StrengthView): TemplateResult {
  const { equipment } = strength.wishes;
  const choose = (id: EquipmentId, isThere: boolean): void => {
    desk.act({
      ...desk.request,
      equipment: equipmentIds.filter((each) => (each === id ? isThere : equipment.includes(each))),
    });
  };
  return html`<fieldset class="equipment" part="field">
    <legend>${words.say('strength.equipment')}</legend>
    ${equipmentIds.map(
      (id) =>
        html`<label>
          <input
            type="checkbox"
            .checked=${live(equipment.includes(id))}
            @change=${({ currentTarget }: Event) => {
              if (currentTarget instanceof HTMLInputElement) choose(id, currentTarget.checked);
            }}
          />
          ${words.say(`strength.equipment.${id}`)}
        </label>`,
    )}
  </fieldset>`;
}

/** The minutes of every session, those of the plan while nobody moves the slider. */
function minutesField(view: StrengthView): TemplateResult {
  const { words, method, strength, desk } = view;
  const { minutes } = strength.wishes;
  const [planned, ...others] = [...new Set(strength.sessions.map(({ plannedMinutes }) => plannedMinutes))];
  const session = method.categories.find(({ id }) => id === 'strength')?.session;
  if (planned === undefined || !session) return html``;
  const value = minutes ?? planned;
  return html`<div class="strength-minutes">
    ${numberField(view, {
      id: 'strength-minutes',
      label: words.say('strength.minutes'),
      value,
      range: {
        least: strengthLimits.minutes.least,
        most: Math.max(session.longest, value),
        step: method.rounding.step,
      },
      unit: words.say('unit.minutes'),
      spoken: words.minutes(value),
      set: (next) => ({ ...desk.request, minutes: next }),
    })}
    <p class="hint">
      ${words.say('strength.minutes.hint', {
        minutes: words.list([planned, ...others].map((each) => words.minutesShort(each))),
      })}
    </p>
    <button
      type="button"
      class="act"
      aria-disabled=${minutes === null ? 'true' : 'false'}
      @click=${() => {
        if (minutes !== null) desk.act({ ...desk.request, minutes: null });
      }}
    >
      ${words.say('strength.minutes.back')}
    </button>
  </div>`;
}
