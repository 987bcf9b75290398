import { html, nothing, type TemplateResult } from 'lit';
import type { HandoutView } from './handout-view.js';

/** What came of the last act. It is there from the start, so that listeners hear what comes into it. */
export function messageLine(view: HandoutView): TemplateResult {
  return html`<div class="message" role="status">${told(view)}</div>
    ${byHand(view)} ${offered(view)} ${back(view)}`;
}

function told({ words, details, desk: { message } }: HandoutView): TemplateResult | typeof nothing {
  if (!message) return nothing;
  const { key, values = {}, problems = [], notShown = [] } = message;
  return html`<p>${words.capital(words.say(key, values))}</p>
    ${
      notShown.length === 0
        ? nothing
        : html`<p>
            ${words.say('handout.not-shown', { parts: words.list(notShown.map((part) => words.say(`handout.part.${part}`))) })}
          </p>`
    }
    ${problems.slice(0, mostTold).map((problem) => html`<p class="wrong">${details.sayProblem(words, problem)}</p>`)}
    ${
      problems.length > mostTold
        ? html`<p class="wrong">${words.say('problem.more', { count: problems.length - mostTold })}</p>`
        : nothing
    }`;
}

const mostTold = 6;

/** What could not be saved or copied, or what a frame may have kept from being saved: to be copied by hand. */
function byHand({ words, desk: { message } }: HandoutView): TemplateResult | typeof nothing {
  const field = (text: string): TemplateResult =>
    html`<textarea
      class="typed by-hand"
      readonly
      rows="4"
      aria-label=${words.say('handout.by-hand')}
      .value=${text}
    ></textarea>`;
  if (message?.text !== undefined) return field(message.text);
  if (message?.copy === undefined) return nothing;
  return html`<details class="box">
    <summary>${words.say('handout.nothing-saved')}</summary>
    ${field(message.copy)}
  </details>`;
}

/** Plans of a file that has several. */
function offered({ words, desk }: HandoutView): TemplateResult | typeof nothing {
  if (desk.offered.length === 0) return nothing;
  return html`<ul class="kept">
      ${desk.offered.map(
        ({ name, text }) =>
          html`<li>
            <b>${name}</b>
            <button
              type="button"
              class="act"
              aria-label=${words.say('keep.open.named', { name })}
              @click=${() => void desk.open(text)}
            >
              ${words.say('keep.open')}
            </button>
          </li>`,
      )}
    </ul>
    ${
      desk.mayKeep
        ? html`<p>
            <button type="button" class="act" @click=${() => void desk.kept.keepAll(desk.offered)}>
              ${words.say('keep.all', { count: desk.offered.length })}
            </button>
          </p>`
        : nothing
    }`;
}

function back({ words, desk }: HandoutView): TemplateResult | typeof nothing {
  if (!desk.canGoBack) return nothing;
  return html`<p>
    <button type="button" class="act" @click=${() => void desk.goBack()}>${words.say('handout.back')}</button>
  </p>`;
}
