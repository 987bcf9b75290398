import { foundations, tally, type AreaId, type Foundation } from '../../plan/basis/foundations.js';
import { checkRules } from '../../plan/checks/checks-ground.js';
import { statusIds } from '../../training/method/ids.js';
import type { Method } from '../../training/method/document.js';
import { headed } from '../joined.js';
import { reasonOf, type Reason } from '../reason.js';
import type { Words } from '../words.js';

/** What a part of a method rests on. */
export interface BasisArea {
  readonly id: AreaId;
  readonly title: string;
  readonly reasons: readonly Reason[];
}

/** Everything in one sentence: how many numbers and rules are published, common practice, assumptions. */
export function basisHeadline(words: Words, method: Method): string {
  const counts = tally(method);
  const parts = statusIds.map((id) => words.say(`basis.count.${id}`, { count: counts[id] }));
  return words.say('basis.headline', { parts: words.list(parts) });
}

/** Part by part; a reason with a name begins with it. */
export const basisAreas = (words: Words, method: Method): readonly BasisArea[] =>
  foundations(method).map(({ area, list }) => ({
    id: area,
    title: words.say(`basis.area.${area}`),
    reasons: list.map((founded) => reasonWithName(words, founded)),
  }));

function reasonWithName(words: Words, { name, hours, ...founded }: Foundation): Reason {
  const reason = reasonOf(words, founded);
  const text = hours === undefined ? reason.text : words.text(founded.reason, { hours: words.hours(hours) });
  if (name === null) return { ...reason, text };
  return { ...reason, text: headed(words, words.capital(words.text(name)), text) };
}

/** A place where studies and common practice differ. */
export interface Difference {
  readonly name: string;
  readonly text: string;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
}

/** Every place where studies and common practice differ, or where a number that people look for is left out. */
export const differences = (words: Words, method: Method): readonly Difference[] =>
  checkRules(method).differences.map(({ name, text, sources }) => ({
    name: words.text(name),
    text: words.text(text),
    sources,
  }));
