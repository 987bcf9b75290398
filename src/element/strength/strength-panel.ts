import { html, type TemplateResult } from 'lit';
import type { StrengthRequest } from '../../plan/strength/wishes.js';
import { strengthHeadline } from '../../words/strength/session-text.js';
import { strengthNoticeLine } from '../../words/strength/strength-notice-line.js';
import { strengthReasons } from '../../words/strength/strength-reasons.js';
import { box } from '../concrete/box.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';
import { noteList } from '../concrete/note-list.js';
import { reasonList } from '../concrete/reason-list.js';
import { liftedBox } from './lifted-box.js';
import { sessionCard } from './session-card.js';
import { strengthInputs } from './strength-inputs.js';
import type { StrengthView } from './strength-view.js';

/** Strength made concrete: the answer in a sentence, what there is to train with, every session set by set. */
export function strengthPanel(view: ConcreteView<StrengthRequest>): TemplateResult {
  const { words, plan, method, desk } = view;
  const { strength } = plan;
  if (!strength) return html``;
  const full: StrengthView = { ...view, strength };
  const notes = strength.notices.map((notice) => ({
    level: notice.level,
    text: strengthNoticeLine(words, method, { notice, strength }),
  }));
  return html`<header>
      <h3 class="panel-title">${words.say('strength.title')}</h3>
      <p class="lead">${strengthHeadline(words, method, strength)}</p>
    </header>
    ${strengthInputs(full)}
    <div class="strength-sessions">${strength.sessions.map((session, index) => sessionCard(full, session, index))}</div>
    ${noteList([...notes, { level: 'caution', text: words.say('strength.caution') }])}
    <div class="boxes">
      ${box(view, 'strength', 'lifted', () => liftedBox(full))}
      ${box(view, 'strength', 'basis', () => reasonList(strengthReasons(words, method, strength.stage)))}
    </div>
    <div class="visually-hidden" role="status">${desk.message}</div>`;
}
