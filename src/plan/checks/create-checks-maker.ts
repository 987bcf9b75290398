import type { Block } from '../../sheet/model.js';
import { dayFacts } from '../../training/checks/day-facts.js';
import { dayFactIds, sessionFactIds, type Facts } from '../../training/checks/facts.js';
import { sessionFacts } from '../../training/checks/session-facts.js';
import { effortsOf } from '../../training/load/efforts-of.js';
import type { Method } from '../../training/method/document.js';
import { byCategory, type ByCategory } from '../../training/method/ids.js';
import { factQuantity, notKnown } from './check-quantities.js';
import { checksBlock } from './checks-block.js';
import type { ChecksMaker } from './checks-maker.js';
import { sessionsBlock } from './sessions-block.js';
import type { ChecksWishes } from './wishes.js';

/** What brings checks to sheets, by what a runner has told. */
export function createChecksMaker(wishes: ChecksWishes): ChecksMaker {
  const efforts = (method: Method): ByCategory<number> => ({ ...effortsOf(method), ...wishes.efforts });
  return {
    reading: (method) => ({
      writes: laidFacts.map(factQuantity),
      of: (days) => {
        const lengths = byCategory((id) =>
          (days ?? []).flatMap((sessions) =>
            sessions.filter((each) => each.category === id).map((each) => each.minutes),
          ),
        );
        const facts: Facts = days
          ? { ...sessionFacts(lengths, efforts(method)), ...dayFacts(days, efforts(method)) }
          : {};
        return laidFacts.map((id) => facts[id] ?? notKnown);
      },
    }),
    extend: (method, model, { picks }) => {
      const isLaid = model.blocks.some(({ writes }) => writes.includes(factQuantity('rest_days')));
      const sessions: readonly Block[] = isLaid
        ? []
        : [sessionsBlock(method, model, { picks, efforts: efforts(method) })];
      const known = isLaid ? laidFacts : sessionFactIds;
      // First of all how the plan stands; then what that was measured from.
      return { ...model, blocks: [checksBlock(method, known, wishes), ...model.blocks, ...sessions] };
    },
  };
}

const laidFacts = [...sessionFactIds, ...dayFactIds] as const;
