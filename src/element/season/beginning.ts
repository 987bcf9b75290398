import type { SeasonRequest } from '../../plan/season/wishes.js';
import type { Problem } from '../../problem.js';
import { isPlainObject } from '../is-plain-object.js';
import type { SeasonAttributes } from './season-attributes.js';
import { today } from '../today.js';

/** The season that a page begins with. */
export class Beginning {
  request: SeasonRequest = {};
  problems: readonly Problem[] = [];
  #page: SeasonAttributes | null = null;

  /** Takes over what the page says; true where that is something new. */
  take({ season, eventDate, mostHours }: SeasonAttributes): boolean {
    const page = { season, eventDate, mostHours };
    const last = this.#page;
    const isSame = last?.season === season && last?.eventDate === eventDate && last?.mostHours === mostHours;
    if (last && isSame) return false;
    this.#page = page;
    const isRead = season === undefined || season === null || isPlainObject(season);
    this.problems = isRead
      ? []
      : [{ path: 'season', value: typeof season, code: 'wrong-type', allowed: { expected: 'object' } }];
    this.request = asked(isPlainObject(season) ? { ...season } : {}, page);
    return last !== null;
  }
}

/** A page that names no day has a season that begins today. */
function asked(given: SeasonRequest, { eventDate, mostHours }: SeasonAttributes): SeasonRequest {
  const request = {
    ...given,
    ...(eventDate == null ? {} : { date: eventDate }),
    ...(mostHours == null ? {} : { mostHours }),
  };
  return request.date === undefined && request.start === undefined ? { ...request, start: today() } : request;
}
