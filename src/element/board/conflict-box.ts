import { html, nothing, type TemplateResult } from 'lit';
import { makeChange } from '../../plan/week/acts.js';
import type { Wish } from '../../training/week/wish.js';
import { dayNames } from '../../words/week/day-name.js';
import { wayOutLine } from '../../words/week/way-out-line.js';
import { wishLine } from '../../words/week/wish-line.js';
import { actButton } from './act-button.js';
import type { BoardView } from './board-view.js';

/** So many ways out are shown at first. */
const shown = 4;

/** Where nothing fits: the wishes that cannot hold together, and what would help, each a button. */
export function conflictBox(view: BoardView): TemplateResult | typeof nothing {
  const { words, method, week } = view;
  const { state, conflict } = week;
  if (state !== 'nothing-fits') return nothing;
  if (!conflict) return html`<p class="quiet">${words.say('board.conflict.looking')}</p>`;
  const buttons = conflict.waysOut.map((wayOut) =>
    actButton(words.capital(wayOutLine(words, method, wayOut)), () => {
      view.board.act(wayOut.changes.reduce(makeChange, week.wishes));
    }),
  );
  return html`<section class="conflict" aria-labelledby="conflict-title">
    <h4 id="conflict-title">${words.say('board.conflict.wishes')}</h4>
    <ul>
      ${wishLines(view, conflict.wishes).map((line) => html`<li>${words.capital(line)}</li>`)}
    </ul>
    <h4>${words.say('board.conflict.ways')}</h4>
    <div class="acts">${buttons.slice(0, shown)}</div>
    ${
      buttons.length > shown
        ? html`<details>
            <summary>${words.say('board.conflict.more')}</summary>
            <div class="acts">${buttons.slice(shown)}</div>
          </details>`
        : nothing
    }
  </section>`;
}

/** A line for each wish; days off are told together. */
function wishLines({ words, method }: BoardView, wishes: readonly Wish[]): string[] {
  const isOff = ({ kind, amount }: Wish): boolean => kind === 'day-minutes' && amount === 0;
  const off = wishes.filter(isOff).map(({ day }) => day ?? 0);
  const lines = wishes.filter((wish) => !isOff(wish)).map((wish) => wishLine(words, method, wish));
  return off.length === 0
    ? lines
    : [...lines, words.say('board.conflict.off', { count: off.length, days: dayNames(words, off) })];
}
