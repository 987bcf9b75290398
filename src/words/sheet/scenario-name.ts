import type { Scenario } from '../../plan/scenarios/document.js';
import type { Words } from '../words.js';

/**
 * What a scenario is called: as the person has named it, else by what it is about.
 *
 * @example scenarioName(words, { name: '', inputs: { hours: 4, phase: 'build', … }, … }) // '4 h, build'
 */
export function scenarioName(words: Words, { name, inputs }: Pick<Scenario, 'name' | 'inputs'>): string {
  return name === '' ? plainName(words, inputs) : name;
}

/** The name of a scenario that nobody has named. */
export function plainName(words: Words, { hours, phase }: Scenario['inputs']): string {
  return words.say('sheet.plain-name', { hours: words.hoursShort(hours), phase: words.say(`phase.${phase}`) });
}
