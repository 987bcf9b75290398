import { html, nothing, type TemplateResult } from 'lit';
import type { StrengthBlock, StrengthSession } from '../../plan/strength/document.js';
import { leftOutLines, roughMinutes, sessionTitle, timeLine } from '../../words/strength/session-text.js';
import { exerciseItem } from './exercise-item.js';
import type { StrengthView } from './strength-view.js';

/** A session set by set: warm-up, movements alone or in turn, cool-down; what it takes, and what did not fit. */
export function sessionCard(view: StrengthView, session: StrengthSession, index: number): TemplateResult {
  const { words, method } = view;
  return html`<section class="strength-session" data-category="strength" aria-labelledby="strength-session-${index}">
    <header>
      <h4 id="strength-session-${index}">${sessionTitle(words, session, index)}</h4>
      <span class="quiet">${words.minutesShort(session.minutes)} · ${words.say(`strength.legs.${session.legs}`)}</span>
    </header>
    <ol>
      ${easyItem(view, 'warm-up', session.warmUp)} ${session.blocks.map((block) => blockItem(view, block, index))}
      ${easyItem(view, 'cool-down', session.coolDown)}
    </ol>
    ${session.blocks.length > 0 ? html`<p class="quiet">${timeLine(words, session)}</p>` : nothing}
    ${leftOutLines(words, method, session).map((line) => html`<p>${line}</p>`)}
  </section>`;
}

function easyItem({ words }: StrengthView, part: 'warm-up' | 'cool-down', seconds: number): unknown {
  if (seconds === 0) return nothing;
  return html`<li class="easy">
    <b>${words.say(`strength.${part}`)}</b> ${roughMinutes(words, seconds)}
    <span class="quiet">${words.say(`strength.${part}.how`)}</span>
  </li>`;
}

/** One movement, or two that take turns. */
function blockItem(view: StrengthView, { exercises, rest }: StrengthBlock, session: number): TemplateResult {
  const { words } = view;
  const pause = words.say('strength.seconds', { count: rest });
  return html`<li class=${exercises.length > 1 ? 'in-turn' : 'alone'}>
    ${exercises.map((exercise) => exerciseItem(view, exercise, session))}
    <p class="quiet rest">${words.say(exercises.length > 1 ? 'strength.in-turn' : 'strength.rest', { rest: pause })}</p>
  </li>`;
}
