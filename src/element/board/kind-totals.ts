import { html, nothing, type TemplateResult } from 'lit';
import { addSession, settleSessions } from '../../plan/week/acts.js';
import { categoryIds, type CategoryId } from '../../training/method/ids.js';
import { dayQuantities } from '../../training/method/week-names.js';
import { categoryName } from '../../words/category-name.js';
import { headed } from '../../words/joined.js';
import { actButton } from './act-button.js';
import type { BoardView } from './board-view.js';

/** A usual session of a kind, in whole steps. */
export function typicalMinutes({ method }: Pick<BoardView, 'method'>, category: CategoryId): number {
  const { step } = method.rounding;
  const { session } = method.categories.find(({ id }) => id === category) ?? {};
  return Math.max(step, Math.round((session?.typical ?? step) / step) * step);
}

/** What each kind has on the days, against the minutes it should have. */
export function kindTotals(view: BoardView): TemplateResult | typeof nothing {
  const { words, week, plan } = view;
  if (!week.days) return nothing;
  const kinds = categoryIds.filter((id) => plan.rounded[id] > 0 || week.sessions[id].length > 0);
  return html`<table class="kinds">
    <caption class="visually-hidden">
      ${words.say('board.kinds')}
    </caption>
    <thead>
      <tr>
        ${['kind', 'laid', 'off', 'sessions', 'change'].map((key) => html`<th scope="col">${words.say(`board.kinds.${key}`)}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${kinds.map((id) => kindRow(view, id))}
    </tbody>
  </table>`;
}

function kindRow(view: BoardView, category: CategoryId): TemplateResult {
  const { words, method, board, week, plan } = view;
  const sessions = week.sessions[category];
  const laid = sessions.reduce((sum, each) => sum + each, 0);
  const off = laid - plan.rounded[category];
  const name = categoryName(words, method, category);
  const [add, asFits] = [words.say('board.add'), words.say('board.as-fits')];
  const isSettled = week.wishes.sessions[category] !== undefined;
  return html`<tr>
    <th scope="row"><span class="swatch" data-category=${category}></span>${name}</th>
    <td>${words.minutesShort(laid)}</td>
    <td>
      ${off === 0 ? words.say('board.off.none') : words.say(off > 0 ? 'board.off.more' : 'board.off.less', { by: words.minutesShort(Math.abs(off)) })}
    </td>
    <td>${sessions.length === 0 ? '–' : words.sessions(sessions)}</td>
    <td class="acts">
      ${actButton(
        add,
        sessions.length >= dayQuantities.length
          ? null
          : () => {
              board.act(addSession(week, category, typicalMinutes(view, category)));
            },
        headed(words, add, name),
      )}
      ${
        isSettled
          ? actButton(
              asFits,
              () => {
                board.act(settleSessions(week, category, null));
              },
              headed(words, asFits, name),
            )
          : nothing
      }
    </td>
  </tr>`;
}
