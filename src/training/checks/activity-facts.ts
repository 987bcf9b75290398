import type { CheckRules } from '../method/check-rules.js';
import type { ByCategory } from '../method/ids.js';
import type { activityFactIds, Facts } from './facts.js';

/** Moderate, vigorous, or neither. */
export type ActivityClass = 'moderate' | 'vigorous' | null;

/**
 * How hard a kind of training is for the body.
 *
 * @param multiple of the energy at rest.
 * @source the multiples by the 2024 Adult Compendium of Physical Activities (herrmann in shared/evidence); that moderate
 *   begins at 3.0 and vigorous at 6.0 is from memory.
 */
export function activityClass(multiple: number, { moderate, vigorous }: CheckRules['activity']): ActivityClass {
  if (multiple >= vigorous) return 'vigorous';
  return multiple >= moderate ? 'moderate' : null;
}

/**
 * Moderate and vigorous minutes of a week, and both together as moderate ones.
 *
 * @param minutes by category.
 * @example 132 vigorous and 36 moderate minutes, one vigorous for two moderate: activity_minutes is 300
 */
export function activityFacts(
  minutes: ByCategory<number>,
  activity: CheckRules['activity'],
): Facts & Readonly<Record<(typeof activityFactIds)[number], number>> {
  const inClass = (wanted: ActivityClass): number =>
    activity.kinds.reduce(
      (sum, { id, multiple }) => (activityClass(multiple, activity) === wanted ? sum + minutes[id] : sum),
      0,
    );
  const [moderate, vigorous] = [inClass('moderate'), inClass('vigorous')];
  return {
    moderate_minutes: moderate,
    vigorous_minutes: vigorous,
    activity_minutes: moderate + activity.vigorous_counts * vigorous,
  };
}
