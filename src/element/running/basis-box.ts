import { html, nothing, type TemplateResult } from 'lit';
import { runningReasons } from '../../words/running/running-reasons.js';
import { shareLines } from '../../words/running/share-lines.js';
import { uptakeLine } from '../../words/running/uptake-line.js';
import { reasonList } from '../concrete/reason-list.js';
import type { RunningView } from './running-view.js';

/** How the paces come about, and what the numbers rest on. */
export function basisBox({ words, method, running }: RunningView): TemplateResult {
  const { basis } = running;
  return html`${
    basis
      ? html`<p>${uptakeLine(words, basis)}</p>
          <ul>
            ${shareLines(words, method).map((line) => html`<li>${line}</li>`)}
          </ul>`
      : nothing
  }
  ${reasonList(runningReasons(words, method))}`;
}
