import type { ConcretePlan } from '../../plan/handout/concrete-plan.js';
import type { ConcreteSession } from '../../plan/running/document.js';
import type { StrengthSession } from '../../plan/strength/document.js';
import type { Method } from '../../training/method/document.js';
import type { CategoryId } from '../../training/method/ids.js';
import { categoryTitle } from '../category-name.js';
import { distancesOf } from '../running/distances.js';
import { runLine } from '../running/run-line.js';
import type { Words } from '../words.js';
import { effortText } from './effort-text.js';
import { strengthBlocks, strengthLines } from './strength-blocks.js';

/** A session as a runner takes it home. */
export interface SessionText {
  readonly category: CategoryId;
  /** 0 for Monday to 6 for Sunday; null where any day will do. */
  readonly day: number | null;
  readonly minutes: number;
  /** "Slow running" */
  readonly title: string;
  /** "45 min" */
  readonly length: string;
  /** How hard, 0 to 10: "2 to 3 of 10". */
  readonly effort: string;
  /** What it is made of, as a sentence; how it should feel where no pace is known. */
  readonly how: string;
  /** Its sets, a line each; empty for what is no strength. */
  readonly sets: readonly string[];
}

/** What the words for a session are made from. */
interface Ground {
  readonly words: Words;
  readonly method: Method;
  readonly plan: ConcretePlan;
}

/** Every session of the week, in the order of the days. */
export function sessionTexts(words: Words, method: Method, plan: ConcretePlan): readonly SessionText[] {
  const ground: Ground = { words, method, plan };
  const strength = [...plan.strength.sessions];
  return plan.running.sessions.map((session) => {
    const index = strength.findIndex(
      ({ day, plannedMinutes }) => session.day === day && session.minutes === plannedMinutes,
    );
    const filled = session.category === 'strength' && index >= 0 ? strength.splice(index, 1)[0] : undefined;
    return sessionText(ground, session, filled);
  });
}

function sessionText(ground: Ground, session: ConcreteSession, filled: StrengthSession | undefined): SessionText {
  const { words, method, plan } = ground;
  const { category, day, minutes } = session;
  return {
    category,
    day,
    minutes,
    title: categoryTitle(words, method, category),
    length: words.minutesShort(minutes),
    effort: words.say('handout.effort', { effort: effortText(words, method, { plan, category }) }),
    how: howText(ground, session, filled),
    sets: filled ? strengthLines(words, strengthBlocks(words, method, filled)) : [],
  };
}

function howText({ words, plan }: Ground, session: ConcreteSession, filled: StrengthSession | undefined): string {
  const { running } = plan;
  if (session.parts.length === 0)
    return filled ? words.say('handout.how.strength') : words.say(`handout.how.${session.category}`);
  const distance = session.metres && distancesOf(words, running.wishes.unit).span(session.metres);
  const line = runLine(words, running, session);
  return distance ? `${line} ${words.say('handout.distance', { distance })}` : line;
}
