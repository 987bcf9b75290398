import type { PlanRunning, RunningGuide } from '../../plan/running/document.js';
import { runningRules } from '../../plan/running/running-ground.js';
import type { Method } from '../../training/method/document.js';
import type { Span } from '../../training/running/span.js';
import type { Words } from '../words.js';
import { dashed } from './distances.js';

/** Beats a minute: "124–144". */
export const heartSpanText = (words: Words, { from, to }: Span): string => dashed(words.number(from), words.number(to));

/** "124–144 a minute, moderate to vigorous" */
export function guideHeart(words: Words, heart: Span, bands: NonNullable<RunningGuide['bands']>): string {
  const beats = heartSpanText(words, heart);
  const [from, to] = [bands.from, bands.to].map((band) => words.say(`running.band.${band}`));
  return from === to
    ? words.say('running.beats.in-band', { beats, band: from ?? '' })
    : words.say('running.beats.in-bands', { beats, from: from ?? '', to: to ?? '' });
}

/** Where the highest heart rate comes from, and by what the ranges go; empty where none is known. */
export function heartLines(words: Words, method: Method, { highest, wishes }: PlanRunning): readonly string[] {
  if (!highest) return [];
  const { spread } = runningRules(method).heart;
  const estimates = highest.estimates.map(({ id, beats }) =>
    words.say('running.highest.by', { name: words.say(`running.estimate.${id}`), beats: Math.round(beats) }),
  );
  return [
    words.say(`running.highest.${highest.from}`, {
      beats: Math.round(highest.beats),
      estimates: words.list(estimates),
      ...spread,
    }),
    words.say(wishes.restingHeart === null ? 'running.heart.highest' : 'running.heart.reserve'),
    words.say('running.heart.lag'),
  ];
}
