import type { ConcreteSession, PlanRunning } from '../../plan/running/document.js';
import type { RunPart } from '../../training/running/run-session.js';
import { speedOf } from '../../training/running/distance.js';
import { joined } from '../joined.js';
import type { Words } from '../words.js';
import { distancesOf, shortMetres } from './distances.js';

/**
 * What a run is made of, as a sentence.
 *
 * @example 'Warm-up 7 minutes; 3 × 3.5 minutes at 4:10 to 4:25 a kilometre, 790 to 840 m each, with 2 minutes easy between; cool-down 3.5 minutes.'
 */
export function runLine(words: Words, running: PlanRunning, session: ConcreteSession): string {
  const told = session.parts.flatMap((part) => partText(words, { running, session, part }));
  return told.length === 0 ? '' : `${words.capital(joined(words, told, 'semicolon'))}.`;
}

interface Part {
  readonly running: PlanRunning;
  readonly session: ConcreteSession;
  readonly part: RunPart;
}

function partText(words: Words, { running, session, part }: Part): string[] {
  const { kind, minutes, times } = part;
  // The rests are told with the bouts that they are between.
  if (kind === 'rest') return [];
  if (kind !== 'work') return [words.say(`running.part.${kind}`, { minutes: words.minutes(minutes) })];
  const rest = session.parts.find((each) => each.kind === 'rest');
  const bouts = words.say(times === 1 ? 'running.part.work' : 'running.part.bouts', {
    times,
    minutes: words.minutes(minutes),
    how: howText(words, running, session),
  });
  const each = times > 1 ? metresText(words, { running, session, part }) : [];
  const between = rest ? [words.say('running.part.rest', { minutes: words.minutes(rest.minutes) })] : [];
  return [joined(words, [bouts, ...each, ...between], 'comma')];
}

/** By pace where one is known, else by how it should feel. */
function howText(words: Words, { guides, wishes }: PlanRunning, { category }: ConcreteSession): string {
  const guide = guides.find((each) => each.category === category);
  if (guide?.pace) return words.say('running.at-pace', { pace: distancesOf(words, wishes.unit).pace(guide.pace) });
  return words.say(`running.feel.${category}`);
}

function metresText(words: Words, { running, session, part }: Part): string[] {
  const pace = running.guides.find(({ category }) => category === session.category)?.pace;
  if (!pace) return [];
  const metres = { from: speedOf(pace.to) * part.minutes, to: speedOf(pace.from) * part.minutes };
  return [words.say('running.part.each', { metres: shortMetres(words, metres) })];
}
