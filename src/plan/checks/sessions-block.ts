import type { Block, SheetModel } from '../../sheet/model.js';
import { sessionFactIds } from '../../training/checks/facts.js';
import { sessionFacts } from '../../training/checks/session-facts.js';
import type { Method } from '../../training/method/document.js';
import { byCategory, categoryIds, type ByCategory } from '../../training/method/ids.js';
import { categoryQuantity } from '../../training/method/names.js';
import { bestSessions, isSessionOption } from '../../training/sessions/options.js';
import { isRoundedByHand, needFacts, needFrom } from '../session-need.js';
import type { WeekAsked } from '../week/week-maker.js';
import { factQuantity } from './check-quantities.js';

interface Asked extends Pick<WeekAsked, 'picks'> {
  readonly efforts: ByCategory<number>;
}

/** What the sessions of a week say that is not laid on days: those picked where they fit, else the best. */
export function sessionsBlock(method: Method, model: SheetModel, { picks, efforts }: Asked): Block {
  const isByHand = isRoundedByHand(model);
  return {
    id: 'sessions',
    reads: categoryIds.flatMap((id) => needFacts.map((fact) => categoryQuantity(id, fact))),
    writes: sessionFactIds.map(factQuantity),
    compute: (reads) => {
      const sessions = byCategory((id) => {
        const start = categoryIds.indexOf(id) * needFacts.length;
        const need = needFrom(method.rounding, reads.slice(start, start + needFacts.length), isByHand);
        const picked = picks[id];
        return picked && isSessionOption(picked, need) ? picked : bestSessions(need);
      });
      const facts = sessionFacts(sessions, efforts);
      return sessionFactIds.map((id) => facts[id]);
    },
  };
}
