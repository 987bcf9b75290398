import type { Method } from '../../training/method/document.js';
import { seasonRules } from '../../plan/season/season-ground.js';
import type { Words } from '../words.js';

/** What a number of the season rests on. */
export interface SeasonReason {
  readonly id: string;
  readonly text: string;
  /** How well it is founded, in words. */
  readonly status: string;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
}

const parts = ['rise', 'easier', 'taper', 'single_run', 'upkeep', 'way_back', 'recovery'] as const;

/** What the numbers of a method's season rest on, the most important first. */
export function seasonReasons(words: Words, method: Method): readonly SeasonReason[] {
  const rules = seasonRules(method);
  const founded = parts.map((id) => {
    const { reason, status, sources = [] } = rules[id];
    return { id, text: words.text(reason), status: words.say(`status.${status}`), sources };
  });
  const load = {
    id: 'load',
    text: words.say('season-reason.load'),
    status: words.say('status.assumption'),
    sources: [],
  };
  return [...founded, load];
}
