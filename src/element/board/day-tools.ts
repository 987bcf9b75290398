import { html, type TemplateResult } from 'lit';
import { addSession, dayFellOut, toggleFree } from '../../plan/week/acts.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryName } from '../../words/category-name.js';
import { dayName } from '../../words/week/day-name.js';
import { actButton } from './act-button.js';
import type { BoardView } from './board-view.js';
import { typicalMinutes } from './kind-totals.js';

/** Everything that can be done with a day: keep it free, say that it fell out, put a session on it. */
export function dayTools(view: BoardView, day: number): TemplateResult {
  const { words, method, board, week } = view;
  const isFree = week.wishes.free.includes(day);
  const fellOut = (): void => {
    board.opened = null;
    board.focusOn('#proposal-title');
    board.propose({ wishes: dayFellOut(week, day), about: { day, category: null } });
  };
  const isThere = (category: string): boolean => week.days?.[day]?.some((each) => each.category === category) ?? false;
  const add = (category: (typeof categoryIds)[number]): void => {
    const minutes = typicalMinutes(view, category);
    const more = addSession(week, category, minutes);
    board.act({ ...more, pinned: [...more.pinned, { category, minutes, day }] });
  };
  return html`<h4 id="board-tools-title" tabindex="-1">${words.capital(dayName(words, day))}</h4>
    <div class="acts">
      ${actButton(words.say(isFree ? 'board.use-day' : 'board.keep-free'), () => {
        board.act(toggleFree(week.wishes, day));
      })}
      ${isFree ? '' : actButton(words.say('board.fell-out'), fellOut)}
    </div>
    <p class="quiet" id="board-add">${words.say('board.add-here')}</p>
    <div class="acts" role="group" aria-labelledby="board-add">
      ${categoryIds.map((category) =>
        actButton(
          words.capital(categoryName(words, method, category)),
          isThere(category) || week.days === null
            ? null
            : () => {
                add(category);
              },
        ),
      )}
    </div>`;
}
