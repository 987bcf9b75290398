import type { PlanSeason, SeasonWeek } from '../../plan/season/document.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { datesOf } from '../season/dates.js';
import type { Words } from '../words.js';

/** A phase of a season and when it is. */
export interface PhaseSpan {
  /** "Base" */
  readonly name: string;
  /** "weeks 1 to 6, Nov 30 to Jan 10" */
  readonly span: string;
}

/** The phases of a season in their order, as stretches of weeks. */
export function phaseSpans(words: Words, { weeks }: PlanSeason): readonly PhaseSpan[] {
  const stretches: SeasonWeek[][] = [];
  for (const week of weeks) {
    const last = stretches.at(-1);
    if (last?.[0]?.phase === week.phase) last.push(week);
    else stretches.push([week]);
  }
  return stretches.flatMap((stretch) => {
    const [first] = stretch;
    const last = stretch.at(-1);
    return first && last ? [spanOf(words, first, last)] : [];
  });
}

function spanOf(words: Words, first: SeasonWeek, last: SeasonWeek): PhaseSpan {
  const dates = datesOf(words);
  return {
    name: words.capital(words.say(`phase.${first.phase}`)),
    span: words.say(first === last ? 'handout.phase.one' : 'handout.phase', {
      from: first.number,
      to: last.number,
      start: dates.short(first.start),
      end: dates.short(isoDate(knownDay(last.start) + 6)),
    }),
  };
}
