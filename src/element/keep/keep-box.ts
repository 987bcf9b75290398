import { html, nothing, type TemplateResult } from 'lit';
import { writePlanFileText } from '../../exchange/plan-file.js';
import { datesOf } from '../../words/season/dates.js';
import type { HandoutView } from '../handout/handout-view.js';
import { fileName, saveAs } from '../parts/save-as.js';
import { today } from '../today.js';
import { keepMessage } from './kept-plans.js';
import type { KeptPlan } from '../../exchange/kept-file.js';

/** Plans that a person keeps on this device: nothing is kept before somebody asks for it, and all of it can be wiped. */
export function keepBox(view: HandoutView): TemplateResult {
  const { words, desk } = view;
  const { kept } = desk;
  kept.look();
  return html`<p class="hint">${words.say('keep.about')}</p>
    <p class="hint shared-computer">${words.say('keep.shared')}</p>
    <p>
      <button
        type="button"
        class="act"
        @click=${() => {
          const file = desk.collect();
          if (file) void kept.keep(file.name, writePlanFileText(file));
        }}
      >
        ${desk.name === '' ? words.say('keep.do') : words.say('keep.do.named', { name: desk.name })}
      </button>
    </p>
    <div role="status">${kept.message ? html`<p>${keepMessage(words, kept.message)}</p>` : nothing}</div>
    ${kept.before.length > 0 ? putBack(view) : nothing} ${list(view)}`;
}

const putBack = ({ words, desk: { kept } }: HandoutView): TemplateResult =>
  html`<p>
    <button type="button" class="act put-back" @click=${() => void kept.putBack()}>
      ${words.say('keep.put-back')}
    </button>
  </p>`;

function list(view: HandoutView): TemplateResult {
  const { words, desk } = view;
  const { kept } = desk;
  const plans = kept.plans ?? [];
  if (plans.length === 0)
    return html`<p class="quiet">${words.say(kept.plans === null ? 'keep.looking' : 'keep.nothing')}</p>`;
  return html`<ul class="kept">
      ${plans.map((plan) => item(view, plan))}
    </ul>
    <p>
      <button
        type="button"
        class="act"
        @click=${() => {
          saveAs({
            name: fileName([words.say('keep.all-name'), today()], 'json'),
            type: 'application/json',
            text: kept.all,
          });
        }}
      >
        ${words.say('keep.export')}
      </button>
      ${wipe(view, plans.length)}
    </p>`;
}

function item({ words, desk }: HandoutView, { name, kept, text }: KeptPlan): TemplateResult {
  return html`<li>
    <span
      ><b>${name}</b> <span class="quiet">${words.say('keep.since', { date: datesOf(words).short(kept) })}</span></span
    >
    <span>
      <button
        type="button"
        class="act"
        aria-label=${words.say('keep.open.named', { name })}
        @click=${() => void desk.open(text)}
      >
        ${words.say('keep.open')}
      </button>
      <button
        type="button"
        class="act"
        aria-label=${words.say('keep.take-out.named', { name })}
        @click=${() => void desk.kept.takeOut(name)}
      >
        ${words.say('keep.take-out')}
      </button>
    </span>
  </li>`;
}

/** Asked once more, for nothing of it comes back. */
function wipe({ words, desk: { kept } }: HandoutView, count: number): TemplateResult {
  const button = (key: string, act: () => void): TemplateResult =>
    html`<button type="button" class="act" @click=${act}>${words.say(`keep.${key}`, { count })}</button>`;
  if (!kept.isWiping)
    return button('wipe', () => {
      kept.askToWipe(true);
    });
  return html`${button('wipe.sure', () => void kept.wipe())}
  ${button('wipe.not', () => {
    kept.askToWipe(false);
  })}`;
}
