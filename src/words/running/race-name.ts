import { marathonMetres } from '../../training/running/equal-times.js';
import type { Words } from '../words.js';

const named: Readonly<Record<number, string>> = {
  1609.344: 'mile',
  21097.5: 'half-marathon',
  [marathonMetres]: 'marathon',
};

/** What a distance is called: "half marathon", "5 km", "1,500 m". */
export function raceName(words: Words, metres: number): string {
  const name = named[metres];
  if (name !== undefined) return words.say(name === 'mile' ? 'running.race.mile' : `event.${name}`);
  if (metres < 3000) return words.say('running.metres', { metres: words.number(metres) });
  return words.say('running.distance.km', { distance: words.number(metres / 1000) });
}
