import type { PlanLoad } from '../../plan/checks/document.js';
import type { Words } from '../words.js';

/** A number of the load, and how it comes about. */
export interface LoadRow {
  readonly name: string;
  readonly value: string;
  /** The runner's own weeks; '' where they are not told. */
  readonly own: string;
  readonly how: string;
}

/** The load of a week in rows: its sum, and where it lies on days how it is spread. */
export function loadRows(words: Words, { week, spread, own }: PlanLoad): readonly LoadRow[] {
  const whole = (value: number | null): string => (value === null ? words.say('value.none') : words.number(value, 0));
  const ratio = (value: number | null): string => (value === null ? words.say('value.none') : words.number(value, 1));
  const ownText = (text: string, value: number | null): string => (value === null ? '' : text);
  const row = (id: string, value: string, more: Partial<LoadRow> = {}): LoadRow => ({
    name: words.say(`checks.load.${id}`),
    value,
    own: '',
    how: words.say(`checks.load.${id}.how`),
    ...more,
  });
  const ofWeek = row('week', whole(week), { own: ownText(whole(own.load), own.load) });
  if (!spread) return [ofWeek];
  const { mean, deviation, sampleDeviation, monotony, sampleMonotony, strain } = spread;
  return [
    ofWeek,
    row('mean', whole(mean)),
    row('deviation', whole(deviation), {
      how: words.say('checks.load.deviation.how', { other: whole(sampleDeviation) }),
    }),
    row('monotony', ratio(monotony), {
      own: ownText(ratio(own.monotony), own.monotony),
      how: words.say('checks.load.monotony.how', { other: ratio(sampleMonotony) }),
    }),
    row('strain', whole(strain), { own: ownText(whole(own.strain), own.strain) }),
  ];
}
