import { html, nothing, type TemplateResult } from 'lit';
import { makeChange } from '../../plan/week/acts.js';
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
      ${conflict.wishes.map((wish) => html`<li>${words.capital(wishLine(words, method, wish))}</li>`)}
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
