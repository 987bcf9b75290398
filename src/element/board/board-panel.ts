import { html, nothing, type TemplateResult } from 'lit';
import { citations } from '../../words/sources.js';
import { daysWithBoth, orderAdvice } from '../../words/week/order-advice.js';
import { weekVerdict } from '../../words/week/week-verdict.js';
import type { BoardView } from './board-view.js';
import { clashList } from './clash-list.js';
import { conflictBox } from './conflict-box.js';
import { dayColumns } from './day-columns.js';
import { kindTotals } from './kind-totals.js';
import { proposalBox } from './proposal-box.js';
import { tools } from './tools.js';
import { wishesBar } from './wishes-bar.js';
import { citationText } from '../parts/citation-text.js';

/** The week on its days: the verdict, the days with their sessions, what clashes, and everything that can be wished. */
export function boardPanel(view: BoardView): TemplateResult {
  const { words, board, week } = view;
  return html`<header>
      <h3 class="panel-title" id="board-title" tabindex="-1">${words.say('board.title')}</h3>
      <p class="verdict" data-state=${week.state}>${summary(view)} ${weekVerdict(words, week)}</p>
    </header>
    ${wishesBar(view)} ${dayColumns(view)}
    <p id="board-keys" class="quiet keys">${words.say('board.keys')}</p>
    ${proposalBox(view)} ${tools(view)} ${conflictBox(view)} ${clashList(view)} ${orderNote(view)} ${kindTotals(view)}
    <div class="visually-hidden" role="status">${board.message}</div>`;
}

/** How many sessions on how many days; nothing where nothing is laid. */
function summary({ words, week }: BoardView): string {
  if (!week.days) return '';
  const sessions = week.days.flat().length;
  const days = week.days.filter(({ length }) => length > 0).length;
  return words.say('board.summary', {
    sessions: words.say('board.summary.sessions', { count: sessions }),
    days: words.say('board.summary.days', { count: days }),
  });
}

/** Which comes first where a run and strength share a day. */
function orderNote({ words, method, week }: BoardView): TemplateResult | typeof nothing {
  if (daysWithBoth(week).length === 0) return nothing;
  const { text, sources } = orderAdvice(words, method);
  return html`<details class="order">
    <summary>${words.say('board.order')}</summary>
    <p>${text}</p>
    ${citations(sources).map((source) => html`<p><small>${citationText(source)}</small></p>`)}
  </details>`;
}
