import { html, nothing, type TemplateResult } from 'lit';
import { cardsOf, isAt } from '../../plan/week/cards.js';
import type { PlanWeek } from '../../plan/week/document.js';
import { dayQuantities } from '../../training/method/week-names.js';
import { categoryName } from '../../words/category-name.js';
import { dayName, dayShort } from '../../words/week/day-name.js';
import { weekVerdict } from '../../words/week/week-verdict.js';
import { actButton } from './act-button.js';
import type { BoardView } from './board-view.js';

/** The week laid again, beside the week as it is: to be taken or left. */
export function proposalBox(view: BoardView): TemplateResult | typeof nothing {
  const { words, method, board, week } = view;
  const { proposal } = board;
  if (!proposal) return nothing;
  const after = board.tryOut(proposal.wishes);
  if (!after) return nothing;
  const { day, category } = proposal.about;
  const title = category
    ? words.say('board.proposal.missed', { kind: categoryName(words, method, category), day: dayName(words, day) })
    : words.say('board.proposal.fell-out', { day: dayName(words, day) });
  const leave = (): void => {
    board.proposal = null;
    board.focusOn('#board-title');
    board.update();
  };
  return html`<section class="proposal" aria-labelledby="proposal-title">
    <h4 id="proposal-title" tabindex="-1">${words.capital(title)}</h4>
    <p>
      ${after.days ? words.say('board.proposal.moved', { count: movedBetween(week, after) }) : ''}
      ${weekVerdict(words, after)}
    </p>
    <table>
      <thead>
        <tr>
          <td></td>
          ${dayQuantities.map((_, each) => html`<th scope="col">${words.capital(dayShort(words, each))}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${weekRow(view, 'before', { shown: week, other: after })}
        ${weekRow(view, 'after', { shown: after, other: week })}
      </tbody>
    </table>
    <div class="acts">
      ${actButton(words.say('board.proposal.take'), () => {
        board.focusOn('#board-title');
        board.act(proposal.wishes);
      })}
      ${actButton(words.say('board.proposal.leave'), leave)}
    </div>
  </section>`;
}

/** A week in one row; what is not in the other week stands out. */
function weekRow(
  { words, method }: BoardView,
  name: 'before' | 'after',
  { shown, other }: { readonly shown: PlanWeek; readonly other: PlanWeek },
): TemplateResult {
  const others = cardsOf(other);
  return html`<tr>
    <th scope="row">${words.say(`board.proposal.${name}`)}</th>
    ${dayQuantities.map(
      (_, day) =>
        html`<td>
          ${cardsOf(shown)
            .filter((card) => card.day === day)
            .map((card) => {
              const text = `${categoryName(words, method, card.category)} ${words.number(card.minutes)}`;
              return html`<span class="in-short" data-category=${card.category}
                >${others.some(isAt(card)) ? text : html`<mark>${text}</mark>`}</span
              >`;
            })}
        </td>`,
    )}
  </tr>`;
}

/** Sessions of a week that lie on another day in the next, or nowhere. */
function movedBetween(before: PlanWeek, after: PlanWeek): number {
  const there = cardsOf(after);
  return cardsOf(before).filter((card) => !there.some(isAt(card))).length;
}
