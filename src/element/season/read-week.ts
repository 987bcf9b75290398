import type { SeasonWeek } from '../../plan/season/document.js';
import type { SeasonView } from './season-view.js';

/** The week that is read: the one chosen, else the first. */
export function readWeek({ season: { weeks }, desk }: Pick<SeasonView, 'season' | 'desk'>): SeasonWeek {
  const week = weeks.find(({ start }) => start === desk.reading) ?? weeks[0];
  if (!week) throw new Error('a season has a week');
  return week;
}
