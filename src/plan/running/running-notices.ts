import type { RunningRules } from '../../training/method/running-rules.js';
import { speedOf } from '../../training/running/distance.js';
import { slowestRun } from '../../training/running/oxygen.js';
import { dayOf } from '../../training/season/iso-date.js';
import { ages } from '../ages.js';
import type { HighestHeart, RunningBasis, RunningNotice } from './document.js';
import { speedsOf } from './guides.js';
import type { RunningWishes } from './wishes.js';

interface Made {
  readonly wishes: RunningWishes;
  readonly rules: RunningRules;
  readonly basis: RunningBasis | null;
  readonly highest: HighestHeart | null;
}

/** What there is to say of paces and heart rates. */
export function runningNotices(made: Made): readonly RunningNotice[] {
  return [...ofRace(made), ...ofPace(made), ...ofHeart(made), ...ofAge(made)];
}

function ofRace({ wishes: { race, today }, rules: { equal_times } }: Made): RunningNotice[] {
  if (!race) return [];
  const { least_seconds: least, most_seconds: most, old_days } = equal_times;
  const isOutside = race.seconds < least || race.seconds > most;
  const age = race.date && today ? (dayOf(today) ?? 0) - (dayOf(race.date) ?? 0) : 0;
  return [
    ...(isOutside ? [note('race-outside', { seconds: race.seconds, least, most })] : []),
    ...(age > old_days ? [note('old-race', { days: age, limit: old_days })] : []),
  ];
}

function ofPace({ rules, basis }: Made): RunningNotice[] {
  const slow = rules.kinds.find(({ id }) => id === 'slow');
  if (!basis || !slow) return [];
  const { from } = speedsOf(basis, slow);
  return from < slowestRun ? [note('slow-pace', { pace: speedOf(slowestRun) })] : [];
}

/** A highest rate far below what people of that age have was perhaps not the highest. */
function ofHeart({ rules: { heart }, highest }: Made): RunningNotice[] {
  const [first] = highest?.estimates ?? [];
  if (highest?.from !== 'measured' || !first || first.beats - highest.beats <= 2 * heart.spread.most) return [];
  return [note('heart-below-estimate', { beats: highest.beats, estimate: first.beats })];
}

const ofAge = ({ wishes: { age } }: Made): RunningNotice[] =>
  age !== null && age < ages.adult ? [{ code: 'under-18', level: 'caution', values: { age } }] : [];

const note = (code: RunningNotice['code'], values: RunningNotice['values']): RunningNotice => ({
  code,
  level: 'note',
  values,
});
