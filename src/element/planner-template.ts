import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../problem.js';
import { statusMessage } from '../words/week-sentence.js';
import { panels, type PanelName } from './panels.js';
import type { View } from './view.js';

/** What stands around the panels. */
interface Around {
  readonly names: readonly PanelName[];
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
export function plannerTemplate(view: View, { names, isStopped, method, inputs, status }: Around): TemplateResult {
  const { words, details } = view;
  // Alone on the page, the checks have the cautions below them.
  const shown = isStopped ? { ...view, panels: ['checks'] } : view;
  return html`<section
    class="planner"
    part="planner"
    lang=${words.language}
    aria-label=${words.say('planner.label')}
    @input=${keepInside}
  >
    ${details?.problemBox(words, 'faulty-method', method)} ${details?.problemBox(words, 'faulty-inputs', inputs)}
    ${names.map((name) => (isStopped && name !== 'checks' ? nothing : panels[name].render(shown)))}
    <div class="visually-hidden" role="status">${status || nothing}</div>
  </section>`;
}

/** The plan in a sentence, for a listener; nothing while there is none. */
export const spokenPlan = (view: View | null): string =>
  view ? statusMessage(view.words, view.method, view.plan) : '';
