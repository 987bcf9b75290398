import type { Problem } from '../../problem.js';
import type { Method } from './document.js';
import { duplicates } from './duplicates.js';
import { bandIds, type RunningRules } from './running-rules.js';

/** Faults of how a method makes running concrete that no single field shows. */
export function checkRunning({ running }: Method): Problem[] {
  if (!running) return [];
  return [
    ...duplicates(running.kinds, 'running.kinds'),
    ...duplicates(running.heart.bands, 'running.heart.bands'),
    ...duplicates(running.heart.estimates, 'running.heart.estimates'),
    ...spans(running).flatMap(([path, { least, most }]) =>
      least <= most ? [] : [wrongOrder(`${path}.most`, most, { before: 'least', after: 'most' })],
    ),
    ...longRests(running),
    ...bandOrder(running),
    ...ascending('running.equal_times.distances', running.equal_times.distances),
    ...(['uptake', 'reserve', 'highest'] as const).flatMap((edge) =>
      ascending(
        'running.heart.bands',
        running.heart.bands.map((band) => band[edge]),
        `.${edge}`,
      ),
    ),
  ];
}

type Ends = Readonly<Record<'least' | 'most', number>>;

function spans({ kinds, heart, energy }: RunningRules): readonly (readonly [string, Ends])[] {
  return [
    ...kinds.flatMap(({ uptake, effort }, index) => [
      [`running.kinds[${index}].uptake`, uptake] as const,
      [`running.kinds[${index}].effort`, effort] as const,
    ]),
    ['running.heart.spread', heart.spread],
    ['running.energy.cross', energy.cross],
    ['running.energy.strength', energy.strength],
  ];
}

/** Bands have one order, from least to most. */
function bandOrder({ heart: { bands } }: RunningRules): Problem[] {
  // A band that stands twice is told as that.
  if (new Set(bands.map(({ id }) => id)).size < bands.length) return [];
  return bandIds.flatMap((id, index): Problem[] => {
    const value = bands[index]?.id;
    if (value === id) return [];
    return [{ path: `running.heart.bands[${index}].id`, value, code: 'not-one-of', allowed: { choices: [id] } }];
  });
}

/** With longer rests bouts could not be cut so that the parts add up to the session. */
function longRests({ kinds }: RunningRules): Problem[] {
  return kinds.flatMap(({ bouts }, index) => {
    if (!bouts || bouts.rest <= 2 * bouts.work) return [];
    const path = `running.kinds[${index}].bouts.rest`;
    return [{ path, value: bouts.rest, code: 'out-of-range' as const, allowed: { least: 0, most: 2 * bouts.work } }];
  });
}

function ascending(path: string, values: readonly number[], field = ''): Problem[] {
  return values.flatMap((value, index) => {
    const before = index - 1;
    if ((values[before] ?? -1) < value) return [];
    const place = { before: `[${before}]${field}`, after: `[${index}]${field}` };
    return [wrongOrder(`${path}[${index}]${field}`, value, place)];
  });
}

const wrongOrder = (path: string, value: number, allowed: Readonly<Record<'before' | 'after', string>>): Problem => ({
  path,
  value,
  code: 'wrong-order',
  allowed,
});
