import { html, nothing, type TemplateResult } from 'lit';
import { handoutLimits } from '../../plan/file/document.js';
import { scenarioLimits } from '../../plan/scenarios/document.js';
import type { Problem } from '../../problem.js';
import { choiceField } from '../fields/choice-fields.js';
import { dateField, fieldNote } from '../fields/fields.js';
import { textField } from '../fields/text-field.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
import type { HandoutChange, HandoutView } from './handout-view.js';

/** What is handed over, and what is written on it. */
export function handoutFields(view: HandoutView): TemplateResult {
  const { words, plan, desk } = view;
  const { what, start, paper, ink } = desk.choices;
  const choice = <T extends string>(name: 'what' | 'paper' | 'ink', choices: readonly T[], value: T) =>
    choiceField<T, HandoutChange>(view, {
      id: `handout-${name}`,
      label: words.say(`handout.input.${name}`),
      choices: choices.map((each) => ({ value: each, text: words.say(`handout.${name}.${each}`) })),
      value,
      set: (next) => ({ [name]: next }),
    });
  return html`<div class="concrete-inputs">
    ${plan.season ? choice('what', ['week', 'season'], what) : nothing}
    ${
      isWeek(view)
        ? dateField<HandoutChange>(view, {
            id: 'handout-start',
            label: words.say('handout.input.start'),
            value: start,
            set: (date) => ({ start: date }),
          })
        : nothing
    }
    ${line(view, 'name', scenarioLimits.name)} ${line(view, 'runner', handoutLimits.runner)}
    ${line(view, 'contact', handoutLimits.contact)} ${choice('paper', ['a4', 'letter'], paper)}
    ${choice('ink', ['black', 'colour'], ink)} ${noteField(view)}
  </div>`;
}

/** True where a week is handed over, and no season. */
export const isWeek = ({ plan, desk }: HandoutView): boolean => !plan.season || desk.choices.what === 'week';

function line(view: HandoutView, name: 'name' | 'runner' | 'contact', most: number): TemplateResult {
  const { words, desk } = view;
  const label = words.say(`handout.input.${name}`);
  return textField<HandoutChange>(view, {
    id: `handout-${name}`,
    label,
    value: name === 'name' ? desk.name : desk.texts[name],
    set: (text) => tooLong(label, text.trim(), most) ?? { [name]: text.trim() },
  });
}

function noteField(view: HandoutView): TemplateResult {
  const { words, desk } = view;
  const id = 'handout-note';
  const label = words.say('handout.input.note');
  return html`<div class="field handout-note" part="field">
    <label for=${id}>${label}</label>
    <textarea
      id=${id}
      class="typed"
      rows="2"
      aria-describedby="${id}-hint"
      aria-invalid=${desk.drafts.has(id) ? 'true' : 'false'}
      ${typedText(desk.drafts.get(id)?.text ?? desk.texts.note)}
      @input=${beginTyping}
      @blur=${endTyping}
      @change=${(event: Event) => {
        const text = endTyping(event);
        if (text === null) return;
        const problem = tooLong(label, text.trim(), handoutLimits.note);
        if (problem) desk.refuse(problem, { id, label, text });
        else desk.act({ note: text.trim() }, { id, label, text });
      }}
    ></textarea>
    ${fieldNote(view, id)}
  </div>`;
}

const tooLong = (path: string, value: string, most: number): Problem | undefined =>
  Array.from(value).length > most
    ? { path, value: value.slice(0, 40), code: 'too-long', allowed: { most } }
    : undefined;
