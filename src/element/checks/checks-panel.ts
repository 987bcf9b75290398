import { html, type TemplateResult } from 'lit';
import type { ChecksRequest } from '../../plan/checks/wishes.js';
import { screen } from '../../training/checks/screening.js';
import { checksHeadline } from '../../words/checks/checks-headline.js';
import { cautionsOfAge } from '../../words/usual-cautions.js';
import { box } from '../concrete/box.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';
import { noteList } from '../concrete/note-list.js';
import { answersOf } from './answers.js';
import { checkList } from './check-list.js';
import type { ChecksView } from './checks-view.js';
import { loadBox } from './load-box.js';
import { loadInputs, runnerInputs } from './runner-inputs.js';
import { screeningBox } from './screening-box.js';

/** The plan held against what is known: the answer in a sentence, every check, and the questions before the start. */
export function checksPanel(view: ConcreteView<ChecksRequest>): TemplateResult {
  const { words, plan, method, desk } = view;
  if (!plan.load) return html``;
  const full: ChecksView = { ...view, load: plan.load };
  const { stops } = screen(answersOf(desk));
  return html`<header>
      <h3 class="panel-title">${words.say(stops ? 'screening.stopped' : 'checks.title')}</h3>
      ${stops ? html`` : html`<p class="lead">${checksHeadline(words, method, plan.checks)}</p>`}
    </header>
    <div class="boxes">
      <details
        class="box checks-start"
        ?open=${stops || desk.isOpen('start')}
        @toggle=${({ currentTarget }: Event) => {
          if (!(currentTarget instanceof HTMLDetailsElement)) return;
          // The advice cannot be put away while it holds.
          if (stops) currentTarget.open = true;
          desk.toggle('start', currentTarget.open);
        }}
      >
        <summary>${words.say('screening.title')}</summary>
        ${screeningBox(view)}
      </details>
    </div>
    ${stops ? html`` : found(full)}
    <div class="visually-hidden" role="status">${desk.message}</div>`;
}

/** The usual cautions where they matter: by the age that was told. */
const cautionsOf = ({ words, method, desk: { request } }: ChecksView): Parameters<typeof noteList>[0] =>
  cautionsOfAge(words, method, request.age ?? null).map((text) => ({ level: 'caution', text }));

const found = (view: ChecksView): TemplateResult =>
  html`${runnerInputs(view)} ${noteList(cautionsOf(view))} ${checkList(view)}
    <div class="boxes">
      ${box(view, 'checks', 'load', () => loadBox(view))} ${box(view, 'checks', 'own', () => loadInputs(view))}
    </div>`;
