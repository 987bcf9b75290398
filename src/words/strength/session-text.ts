import type { PlanStrength, StrengthSession } from '../../plan/strength/document.js';
import { strengthGround } from '../../plan/strength/strength-ground.js';
import type { Method } from '../../training/method/document.js';
import { dayName } from '../week/day-name.js';
import type { Words } from '../words.js';
import { movementName } from './movement-text.js';

/**
 * Strength in one sentence.
 *
 * @example 'Heavier: 35 minutes on Tuesday and 40 minutes on Friday.'
 */
export function strengthHeadline(words: Words, method: Method, { stage, sessions }: PlanStrength): string {
  if (sessions.length === 0) return words.say('strength.headline.none');
  return words.say(sessions.length === 1 ? 'strength.headline.one' : 'strength.headline', {
    stage: stageName(words, method, stage),
    sessions: words.list(
      sessions.map(({ minutes, day }) =>
        day === null
          ? words.minutes(minutes)
          : words.say('strength.session.on', { minutes: words.minutes(minutes), day: dayName(words, day) }),
      ),
    ),
  });
}

/** What a stage of the method is called. */
export function stageName(words: Words, method: Method, id: string): string {
  const stage = strengthGround(method).rules.stages.find((each) => each.id === id);
  return stage ? words.text(stage.name) : id;
}

/** What a session is called: "Session 1, Tuesday". */
export function sessionTitle(words: Words, { day }: StrengthSession, index: number): string {
  const title = words.say('strength.session', { number: index + 1 });
  return day === null ? title : words.say('strength.session.day', { session: title, day: dayName(words, day) });
}

/** Seconds as minutes that add up for a reader: halves are enough. */
export const roughMinutes = (words: Words, seconds: number): string => words.minutes(Math.round(seconds / 30) / 2);

/** What fills the minutes, and what is left of them. */
export function timeLine(words: Words, { seconds, minutes }: StrengthSession): string {
  // Rounded once, so that both add up to the minutes.
  const used = Math.round(seconds / 30) / 2;
  return words.say('strength.time', {
    used: words.minutes(used),
    minutes: words.minutes(minutes),
    spare: words.minutes(minutes - used),
  });
}

/** What did not fit, the most important first, and what would have more sets with more time; empty where all fits. */
export function leftOutLines(words: Words, method: Method, { leftOut, blocks }: StrengthSession): readonly string[] {
  const exercises = blocks.flatMap((block) => block.exercises);
  const fewer = exercises.filter(({ sets, wishedSets }) => sets < wishedSets);
  return [['strength.left-out', leftOut] as const, ['strength.more-sets', fewer] as const].flatMap(([key, list]) =>
    list.length === 0
      ? []
      : [words.say(key, { movements: words.list(list.map(({ movement }) => movementName(words, method, movement))) })],
  );
}
