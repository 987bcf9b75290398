import type { BandId, IntensityBand, RunningRules } from '../method/running-rules.js';
import type { Span } from './span.js';

/** What is known of a heart, in beats a minute; resting is null where it was not measured. */
export interface Heart {
  readonly highest: number;
  readonly resting: number | null;
}

/**
 * The heart rate at a share of the reserve, in beats a minute.
 *
 * Source: Karvonen MJ, Kentala E, Mustala O. The effects of training on heart rate. Ann Med Exp Biol Fenn
 * 1957;35(3):307–315.
 *
 * @example heartAtReserve(0.6, { highest: 180, resting: 80 }) // 140
 */
export const heartAtReserve = (
  share: number,
  { highest, resting }: { readonly highest: number; readonly resting: number },
): number => (highest - resting) * share + resting;

/** The share of the reserve at a heart rate; the inverse of `heartAtReserve`. */
export const reserveAt = (
  beats: number,
  { highest, resting }: { readonly highest: number; readonly resting: number },
): number => (beats - resting) / (highest - resting);

/** The highest heart rate at an age in years, by one of the method's equations. */
export const highestAt = (age: number, { from, slope }: RunningRules['heart']['estimates'][number]): number =>
  from - slope * age;

/**
 * Heart rates for a range of oxygen uptake: by the reserve, or by the highest rate alone where resting is not known.
 *
 * The bands of the position stand pair shares of uptake, reserve and highest rate; between their edges it goes straight.
 * Source of the bands: Garber CE et al., ACSM position stand. Med Sci Sports Exerc 2011;43(7):1334–1359.
 */
export function heartSpan(
  { least, most }: { readonly least: number; readonly most: number },
  heart: Heart,
  bands: readonly IntensityBand[],
): Span {
  const at = (uptake: number): number => Math.round(beatsAt(uptake, heart, bands));
  return { from: at(least), to: at(most) };
}

function beatsAt(uptake: number, { highest, resting }: Heart, bands: readonly IntensityBand[]): number {
  if (resting === null) return between(bands, uptake, 'highest') * highest;
  return heartAtReserve(between(bands, uptake, 'reserve'), { highest, resting });
}

/** The share of `to` at a share of uptake. */
function between(bands: readonly IntensityBand[], uptake: number, to: 'reserve' | 'highest'): number {
  // Beyond the greatest uptake the heart beats as fast as it can.
  if (uptake >= 1) return 1;
  const edges = [...bands.map((band) => [band.uptake, band[to]] as const), [1, 1] as const];
  const next = edges.findIndex(([edge]) => edge >= uptake);
  const [rightEdge, right] = edges[next] ?? [1, 1];
  const [leftEdge, left] = edges[next - 1] ?? [0, 0];
  return rightEdge === leftEdge ? right : left + ((uptake - leftEdge) / (rightEdge - leftEdge)) * (right - left);
}

/** A band of intensity in beats a minute. */
export interface HeartBand extends Span {
  readonly id: BandId;
}

/**
 * The bands of the position stand in beats a minute: each from its lower edge to below the next one's. The very light
 * one begins where there is nothing below, so it is left out; so is a band that holds no whole beat.
 */
export function heartBands({ highest, resting }: Heart, bands: readonly IntensityBand[]): readonly HeartBand[] {
  const edge = (band: IntensityBand): number =>
    Math.ceil((resting === null ? band.highest * highest : heartAtReserve(band.reserve, { highest, resting })) - 1e-9);
  const whole = bands.slice(1).map((band, index) => {
    const next = bands[index + 2];
    return { id: band.id, from: edge(band), to: next ? edge(next) - 1 : Math.round(highest) };
  });
  return whole.filter(({ from, to }) => from <= to);
}

/** The band that a share of the reserve belongs to: it begins at its lower edge, so 0.395 is light. */
export const bandOfReserve = (share: number, bands: readonly IntensityBand[]): BandId | undefined =>
  bands.findLast(({ reserve }) => share >= reserve)?.id;

/** The band of a heart rate: by the reserve, or by the highest rate alone where resting is not known. */
export function bandAt(beats: number, { highest, resting }: Heart, bands: readonly IntensityBand[]): BandId {
  const found =
    resting === null
      ? bands.findLast((band) => beats / highest >= band.highest)?.id
      : bandOfReserve(reserveAt(beats, { highest, resting }), bands);
  return found ?? 'very-light';
}
