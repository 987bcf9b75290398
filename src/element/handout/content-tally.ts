import type { PlanFile } from '../../plan/file/document.js';
import type { Words } from '../../words/words.js';

/** What is in a plan file, a line each. */
export function tallyOf(
  words: Words,
  { sheet, running, strength, checks, record, handout }: PlanFile,
): readonly string[] {
  const line = (key: string, count: number): string[] =>
    count === 0 ? [] : [words.say(`handout.content.${key}`, { count })];
  const has = (request: object | null): number => (request && Object.keys(request).length > 0 ? 1 : 0);
  return [
    ...line('scenarios', sheet.scenarios.length),
    ...line('season', sheet.scenarios.some(({ season }) => season) ? 1 : 0),
    ...line('running', has(running)),
    ...line('strength', has(strength)),
    ...line('checks', has(checks)),
    ...line('record', record.length),
    ...line('texts', Object.values(handout).some((text) => text !== '') ? 1 : 0),
  ];
}
