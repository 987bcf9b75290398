import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../problem.js';
import { statusMessage } from '../words/week-sentence.js';
import { panels, type PanelName } from './panels.js';
import type { View } from './view.js';

/** What stands around the panels. */
interface Around {
  readonly names: readonly PanelName[];
  /** What the page calls the planner; empty where it does not say. */
  readonly label: string | null | undefined;
  /** True where nobody may change anything. */
  readonly isDisabled: boolean;
  /** True where only the advice to see a professional may be shown. */
  readonly isStopped: boolean;
  /** What is wrong with the method, and with the inputs. */
  readonly method: readonly Problem[];
  readonly inputs: readonly Problem[];
  /** What a listener is told. */
  readonly status: string;
}

/** Inner inputs are our own affair: the page hears `plan-change`, once for each change. */
const keepInside = (event: Event): void => {
  event.stopPropagation();
};

/** The planner: what is wrong, its panels, and what a listener is told. */
export function plannerTemplate(view: View, around: Around): TemplateResult {
  const { names, label, isDisabled, isStopped, method, inputs, status } = around;
  const { words, details } = view;
  // Alone on the page, the checks have the cautions below them.
  const shown = isStopped ? { ...view, panels: ['checks'] } : view;
  return html`<section
    class="planner"
    part="planner"
    lang=${words.language}
    dir=${words.direction}
    aria-label=${label || words.say('planner.label')}
    @input=${keepInside}
  >
    <div class="around" part="header"><slot name="logo"></slot><slot name="header"></slot></div>
    ${details?.problemBox(words, 'faulty-method', method)} ${details?.problemBox(words, 'faulty-inputs', inputs)}
    <fieldset class="panels" role="none" ?disabled=${isDisabled}>
      ${names.map((name) => (isStopped && name !== 'checks' ? nothing : panels[name].render(shown)))}
    </fieldset>
    <div class="around" part="footer"><slot name="contact"></slot><slot name="footer"></slot></div>
    <div class="visually-hidden" role="status">${status || nothing}</div>
  </section>`;
}

/** The plan in a sentence, for a listener; nothing while there is none. */
export const spokenPlan = (view: View | null): string =>
  view ? statusMessage(view.words, view.method, view.plan) : '';
