import type { PlanStrength, PlanWeek, StrengthSession } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { headed, joined } from '../words/joined.js';
import { howHard, loadedSets, nextText, shareText } from '../words/strength/exercise-line.js';
import { maximumLine } from '../words/strength/maximum-line.js';
import { movementName, movementOf } from '../words/strength/movement-text.js';
import {
  leftOutLines,
  roughMinutes,
  sessionTitle,
  strengthHeadline,
  timeLine,
} from '../words/strength/session-text.js';
import { strengthNoticeLine } from '../words/strength/strength-notice-line.js';
import { strengthReasons } from '../words/strength/strength-reasons.js';
import type { Words } from '../words/words.js';
import { listed, page, under } from './paragraphs.js';
import { reasonText } from './reason-text.js';
import type { Speech } from './speech.js';
import { conflictParagraphs } from './week-text.js';

type Block = StrengthSession['blocks'][number];
type Exercise = Block['exercises'][number];

interface Made {
  readonly week: PlanWeek | null;
  readonly strength: PlanStrength;
}

/** The strength of a week as a page of text: the answer, every session set by set, what can be lifted, why. */
export function strengthText({ words, texts }: Speech, method: Method, { week, strength }: Made): string {
  const { notices, sessions, maxima, stage } = strength;
  const [reason, ...reasons] = strengthReasons(words, method, stage).map(reasonText);
  return page([
    strengthHeadline(words, method, strength),
    listed(
      '',
      notices.map((notice) => strengthNoticeLine(words, method, { notice, strength })),
    ),
    ...conflictParagraphs(words, method, week),
    ...sessions.map((session, index) => sessionText(words, method, { session, index })),
    listed(texts.say('strength.movements'), howLines(words, method, sessions)),
    listed(
      words.say('strength.box.lifted'),
      maxima.map((each) => headed(words, movementName(words, method, each.movement), maximumLine(words, each))),
    ),
    under(words.say('strength.box.basis'), reason ?? ''),
    ...reasons,
    words.say('planner.caution', { text: words.say('strength.caution') }),
    words.say('caution.short'),
  ]);
}

function sessionText(
  words: Words,
  method: Method,
  { session, index }: { readonly session: StrengthSession; readonly index: number },
): string {
  const { minutes, legs, warmUp, blocks, coolDown } = session;
  const about = joined(words, [words.minutesShort(minutes), words.say(`strength.legs.${legs}`)], 'comma');
  const items = [
    ...easyPart(words, 'warm-up', warmUp),
    ...blocks.map((block) => blockText(words, method, block)),
    ...easyPart(words, 'cool-down', coolDown),
  ];
  const heading = `${sessionTitle(words, session, index)} (${about})`;
  return [
    under(heading, listed('', items)),
    ...(blocks.length > 0 ? [timeLine(words, session)] : []),
    ...leftOutLines(words, method, session),
  ].join('\n');
}

const easyPart = (words: Words, part: 'warm-up' | 'cool-down', seconds: number): readonly string[] =>
  seconds === 0
    ? []
    : [
        headed(
          words,
          words.say(`strength.${part}`),
          joined(words, [roughMinutes(words, seconds), words.say(`strength.${part}.how`)], 'comma'),
        ),
      ];

/** One movement with its rest, or two that take turns, told as such. */
function blockText(words: Words, method: Method, { exercises, rest }: Block): string {
  const pause = words.say('strength.seconds', { count: rest });
  const told = exercises.map((exercise) => exerciseText(words, method, exercise));
  const [first, second] = told;
  if (!first || second) {
    const heading = headed(words, words.capital(words.say('strength.in-turn', { rest: pause })), '').trimEnd();
    return listed(heading, told.map(inLines));
  }
  const { line, more } = first;
  return inLines({ line: joined(words, [line, words.say('strength.rest', { rest: pause })], 'semicolon'), more });
}

interface Told {
  readonly line: string;
  readonly more: string;
}

/** What comes beside the line of an exercise stands below it. */
const inLines = ({ line, more }: Told): string => [line, more].filter((part) => part !== '').join('\n');

function exerciseText(words: Words, method: Method, exercise: Exercise): Told {
  const told = joined(words, [loadedSets(words, exercise), howHard(words, exercise)], 'semicolon');
  const isWeighed = exercise.kilograms !== null;
  return {
    line: headed(words, movementName(words, method, exercise.movement), told),
    more: isWeighed ? nextText(words, exercise) : shareText(words, exercise),
  };
}

/** How every movement of the week is done and what to mind, each once. */
function howLines(words: Words, method: Method, sessions: readonly StrengthSession[]): readonly string[] {
  const exercises = sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.exercises));
  return [...new Set(exercises.map(({ movement }) => movement))].map((id) => {
    const { name, how, cautions = [] } = movementOf(method, id);
    return headed(words, words.text(name), [how, ...cautions].map((text) => words.text(text)).join(' '));
  });
}
