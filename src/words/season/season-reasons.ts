import type { Method } from '../../training/method/document.js';
import { seasonRules } from '../../plan/season/season-ground.js';
import { reasonOf, type Reason } from '../reason.js';
import type { Words } from '../words.js';

const parts = ['rise', 'easier', 'taper', 'single_run', 'upkeep', 'way_back', 'recovery'] as const;
const load = { status: 'assumption', reason: { key: 'season-reason.load' } } as const;

/** What the numbers of a method's season rest on, by the part of the season, the most important first. */
export function seasonReasons(words: Words, method: Method): readonly (Reason & { readonly id: string })[] {
  const rules = seasonRules(method);
  const founded = [...parts.map((id) => [id, rules[id]] as const), ['load', load] as const];
  return founded.map(([id, part]) => ({ id, ...reasonOf(words, part) }));
}
