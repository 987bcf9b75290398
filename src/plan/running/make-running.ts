import type { Method } from '../../training/method/document.js';
import { runningIds } from '../../training/method/running-rules.js';
import { equalTimes } from '../../training/running/equal-times.js';
import type { Heart } from '../../training/running/heart-rate.js';
import type { Span } from '../../training/running/span.js';
import type { Plan } from '../document.js';
import { basisOf } from './basis.js';
import { concreteSessions } from './concrete-sessions.js';
import type { ConcreteSession, HighestHeart, PlanRunning } from './document.js';
import { bandsOf, guidesOf, highestOf } from './guides.js';
import { runningRules } from './running-ground.js';
import { runningNotices } from './running-notices.js';
import type { RunningWishes } from './wishes.js';

/** The running of a plan made concrete, by a method's rules. */
export function makeRunning(plan: Plan, wishes: RunningWishes, method: Method): PlanRunning {
  const rules = runningRules(method);
  const basis = basisOf(wishes, rules);
  const highest = highestOf(wishes, rules);
  const heart = heartOf(highest, wishes);
  const sessions = concreteSessions(plan, { rules, basis, weight: wishes.weight });
  const runs = sessions.filter(({ category }) => runningIds.some((id) => id === category));
  return {
    wishes,
    basis,
    guides: guidesOf(rules, basis, heart),
    equalTimes: basis ? equalTimes(basis, rules.equal_times) : [],
    highest,
    bands: bandsOf(heart, rules),
    sessions,
    metres: basis && sum(runs, ({ metres }) => metres),
    energy: wishes.weight === null ? null : sum(sessions, ({ energy }) => energy),
    notices: runningNotices({ wishes, rules, basis, highest }),
  };
}

/** What is known of the heart; null where an estimate is not even above the resting rate. */
function heartOf(highest: HighestHeart | null, { restingHeart: resting }: RunningWishes): Heart | null {
  return highest && (resting === null || resting < highest.beats) ? { highest: highest.beats, resting } : null;
}

/** All together; null where one of them is not known. */
function sum(sessions: readonly ConcreteSession[], part: (session: ConcreteSession) => Span | null): Span | null {
  return sessions
    .map(part)
    .reduce<Span | null>((all, each) => all && each && { from: all.from + each.from, to: all.to + each.to }, {
      from: 0,
      to: 0,
    });
}
