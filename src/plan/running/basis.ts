import type { RunningRules } from '../../training/method/running-rules.js';
import { heldShare, uptakeOf } from '../../training/running/oxygen.js';
import type { RunningBasis } from './document.js';
import type { RunningWishes } from './wishes.js';

/** What paces are worked out from: a race, or a threshold pace as a race of its minutes; null where neither is told. */
export function basisOf({ race, thresholdPace }: RunningWishes, rules: RunningRules): RunningBasis | null {
  if (race) return withUptake('race', race);
  if (thresholdPace === null) return null;
  const seconds = rules.threshold.minutes * 60;
  return withUptake('threshold', { metres: (seconds / thresholdPace) * 1000, seconds });
}

const withUptake = (
  from: RunningBasis['from'],
  { metres, seconds }: Pick<RunningBasis, 'metres' | 'seconds'>,
): RunningBasis => ({ from, metres, seconds, held: heldShare(seconds / 60), uptake: uptakeOf({ metres, seconds }) });
