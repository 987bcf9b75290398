import { html, nothing, type TemplateResult } from 'lit';
import { headed } from '../../words/joined.js';
import { nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** The scenarios that have no plan, and why: once for each cause, however many quantities it touches. */
export function scenarioFailures(view: SheetView): TemplateResult | typeof nothing {
  const { words, details, bench } = view;
  const failed = bench.store.planned.flatMap(({ scenario, outcome }) =>
    outcome.ok ? [] : [{ scenario, problems: details.oncePerCause(outcome.problems) }],
  );
  if (failed.length === 0) return nothing;
  return html`<div class="failures" role="alert">
    ${failed.map(
      ({ scenario, problems }) =>
        html`<p class="wrong">
          <strong>${headed(words, nameOf(view, scenario), words.say('sheet.no-plan'))}.</strong>
          ${problems.map((problem) => details.sayProblem(words, problem)).join(' ')}
        </p>`,
    )}
  </div>`;
}
