import { speedByNewton } from '../../reference/running/race-reference.js';

/** Seconds as a clock shows them, by the platform's own dates. */
export function onClock(seconds: number): string {
  const iso = new Date(Math.round(seconds) * 1000).toISOString();
  return iso
    .slice(11, 19)
    .replace(/^00:0?/, '')
    .replace(/^0/, '');
}

/** Seconds a kilometre at a share of an uptake, to the nearest five. */
export const paceAt = (uptake: number, share: number): string =>
  onClock(Math.round(60_000 / speedByNewton(uptake * share) / 5) * 5);
