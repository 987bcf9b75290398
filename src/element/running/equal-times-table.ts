import { html, nothing, type TemplateResult } from 'lit';
import type { EqualTime } from '../../training/running/equal-times.js';
import { clockTime } from '../../words/running/clock-time.js';
import { raceName } from '../../words/running/race-name.js';
import { wideningLine } from '../../words/running/widening-line.js';
import type { RunningView } from './running-view.js';

/** What the race is worth at other distances, by both equations, and the range that can honestly be told. */
export function equalTimesTable({ words, method, running }: RunningView): TemplateResult {
  const { basis, equalTimes } = running;
  if (!basis) return html``;
  const reasons = (['marathon', 'outside'] as const).filter((reason) =>
    equalTimes.some(({ widened }) => widened === reason),
  );
  const range = ({ from, to }: EqualTime): string =>
    from === to ? clockTime(from) : words.say('running.span', { from: clockTime(from), to: clockTime(to) });
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.say('running.box.equal')}>
      <table class="equal-times">
        <thead>
          <tr>
            <th scope="col">${words.say('running.equal.distance')}</th>
            <th scope="col">${words.say('running.equal.time')}</th>
            <th scope="col">${words.say('running.equal.riegel')}</th>
            <th scope="col">${words.say('running.equal.uptake')}</th>
          </tr>
        </thead>
        <tbody>
          ${equalTimes.map(
            (each) =>
              html`<tr>
                <th scope="row">${raceName(words, each.metres)}</th>
                <td>
                  <b>${range(each)}</b>${each.widened ? html`<sup>${reasons.indexOf(each.widened) + 1}</sup>` : nothing}
                </td>
                <td>${clockTime(each.riegel)}</td>
                <td>${clockTime(each.uptake)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    ${reasons.map(
      (reason, index) => html`<p class="quiet"><sup>${index + 1}</sup> ${wideningLine(words, method, reason)}</p>`,
    )}`;
}
