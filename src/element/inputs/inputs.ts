import { html, type TemplateResult } from 'lit';
import { eventIds, levelIds, phaseIds } from '../../training/method/ids.js';
import type { View } from '../view.js';
import { choiceField } from './choice-field.js';
import { numberField } from './number-field.js';

/** The five inputs of the week. */
export function inputs(view: View): TemplateResult {
  const { words, method, plan } = view;
  const label = (field: string): { label: string; hint: string } => ({
    label: words.say(`input.${field}`),
    hint: words.say(`input.${field}.hint`),
  });
  return html`<fieldset class="inputs" part="inputs">
    <legend class="visually-hidden">${words.say('planner.inputs')}</legend>
    ${numberField(view, {
      field: 'hours',
      ...label('hours'),
      range: method.inputs.weekly_hours,
      spoken: words.hours(plan.inputs.hours),
      unit: words.say('unit.hours'),
    })}
    ${choiceField(view, { field: 'phase', choices: phaseIds, slider: 'with slider' })}
    ${choiceField(view, { field: 'level', choices: levelIds, slider: 'with slider' })}
    ${choiceField(view, { field: 'event', choices: eventIds, slider: 'list only' })}
    ${numberField(view, {
      field: 'strengthCap',
      ...label('strength-cap'),
      range: method.inputs.strength_cap,
      spoken: words.minutes(plan.inputs.strengthCap),
      unit: words.say('unit.minutes'),
    })}
  </fieldset>`;
}
