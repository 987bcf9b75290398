import { seasonHours } from '../../training/season/season-hours.js';
import type { SeasonChange, SeasonNotice } from './document.js';
import type { DraftSeason } from './draft-season.js';
import { paceOf } from './pace-of.js';
import { seasonRules } from './season-ground.js';
import { seasonChange, seasonNotice } from './season-notice.js';
import type { SeasonWishes } from './wishes.js';

/** Where the rises before the event end below the most: what most they reach, or what rise would reach it. */
export function mostNotReached(draft: DraftSeason): SeasonNotice[] {
  const { wishes } = draft;
  const reached = highestRise(draft, wishes);
  if (reached === 0 || isReached(draft, reached, wishes.mostHours)) return [];
  const lower = mostReached(draft, reached);
  const needed = riseNeeded(draft);
  const waysOut: SeasonChange[] = [
    ...(lower === null ? [] : [seasonChange('most-hours', { amount: lower })]),
    ...(needed === null ? [] : [seasonChange('rise', { amount: needed })]),
  ];
  const values = { most: wishes.mostHours, reached, rise: wishes.rise };
  return [seasonNotice('most-not-reached', 'note', { values, waysOut })];
}

/** Less than a step is missing. */
const isReached = ({ tools }: DraftSeason, reached: number, most: number): boolean =>
  most - reached < tools.method.rounding.step / 60 - 1e-9;

/** Hours of the highest week before the event that rises, with these wishes; 0 where none does. */
function highestRise({ frames, tools, weeks }: DraftSeason, wishes: SeasonWishes): number {
  const before = weeks.filter(({ calendar }) => calendar.weeksToGo >= 0).length;
  const hours = seasonHours(frames, paceOf(tools.method, wishes)).slice(0, before);
  return Math.max(0, ...hours.map(({ reason, minutes }) => (reason === 'rise' ? minutes : 0))) / 60;
}

/** The most that the rises reach: a lower one makes every rise smaller, so it is tried. */
function mostReached(draft: DraftSeason, reached: number): number | null {
  const { wishes } = draft;
  for (let most = reached; most >= wishes.hours;) {
    const now = highestRise(draft, { ...wishes, mostHours: most });
    if (now === 0 || isReached(draft, now, most)) return most;
    most = now;
  }
  return null;
}

/** The least rise in whole per cent that reaches the most; null where only one would that is worth a look. */
function riseNeeded(draft: DraftSeason): number | null {
  const { wishes, tools } = draft;
  const look = Math.round(seasonRules(tools.method).rise.look * 100);
  for (let percent = Math.floor(wishes.rise * 100 + 1e-9) + 1; percent <= look; percent += 1) {
    const rise = percent / 100;
    if (isReached(draft, highestRise(draft, { ...wishes, rise }), wishes.mostHours)) return rise;
  }
  return null;
}
