import { html, nothing, type TemplateResult } from 'lit';
import { orderAdvice } from '../../words/week/order-advice.js';
import { weekVerdict } from '../../words/week/week-verdict.js';
import type { FullView } from '../controllers/late-panel-controller.js';
import type { Board } from './board.js';
import type { BoardView } from './board-view.js';
import { clashList } from './clash-list.js';
import { conflictBox } from './conflict-box.js';
import { dayColumns } from './day-columns.js';
import { kindTotals } from './kind-totals.js';
import { proposalBox } from './proposal-box.js';
import { tools } from './tools.js';
import { wishesBar } from './wishes-bar.js';

/** The week on its days: the verdict, the days with their sessions, what clashes, and everything that can be wished. */
export function boardPanel(view: FullView, board: Board): TemplateResult {
  const { words, plan } = view;
  const week = board.weekOf(plan);
  const title = html`<h3 class="panel-title" id="board-title">${words.say('board.title')}</h3>`;
  if (!week) return html`<header>${title}</header>`;
  const full: BoardView = { ...view, board, week };
  return html`<header>
      ${title}
      <p class="verdict" data-state=${week.state}>${weekVerdict(words, week)}</p>
    </header>
    ${wishesBar(full)} ${dayColumns(full)}
    <p id="board-keys" class="quiet keys">${words.say('board.keys')}</p>
    ${proposalBox(full)} ${tools(full)} ${conflictBox(full)} ${clashList(full)} ${orderNote(full)} ${kindTotals(full)}
    <div class="visually-hidden" role="status">${board.message}</div>`;
}

/** Which comes first where a run and strength share a day. */
function orderNote({ words, method, week }: BoardView): TemplateResult | typeof nothing {
  const isShared = week.days?.some((sessions) => sessions.length > 1) ?? false;
  return isShared ? html`<p class="quiet">${orderAdvice(words, method).text}</p>` : nothing;
}
