import type { RunTime } from './riegel.js';

/*
 * Daniels J, Gilbert J. Oxygen Power: Performance Tables for Distance Runners. Tempe, AZ: authors; 1979. Oxygen in
 * millilitres a kilogram a minute, speed in metres a minute, on the level, without wind.
 */

const atRest = -4.6;
const linear = 0.182258;
const square = 0.000104;

/** Metres a minute below which the equation was not made, and few people run. */
export const slowestRun = 130;

/**
 * Oxygen that running at a speed takes; about 130 to 400 metres a minute.
 *
 * @example oxygenCost(200).toFixed(1) // '36.0'
 */
export const oxygenCost = (speed: number): number => atRest + linear * speed + square * speed ** 2;

/** The speed that takes so much oxygen: the exact inverse, where the authors print a regression. */
export const speedAt = (oxygen: number): number =>
  (-linear + Math.sqrt(linear ** 2 + 4 * square * (oxygen - atRest))) / (2 * square);

/**
 * The share of the greatest oxygen uptake that can be held for so many minutes; above 1 for less than about eleven.
 *
 * @example heldShare(60).toFixed(3) // '0.888'
 */
export const heldShare = (minutes: number): number =>
  0.8 + 0.1894393 * Math.exp(-0.012778 * minutes) + 0.2989558 * Math.exp(-0.1932605 * minutes);

/** The greatest oxygen uptake that a race implies. */
export function uptakeOf({ metres, seconds }: RunTime): number {
  const minutes = seconds / 60;
  return oxygenCost(metres / minutes) / heldShare(minutes);
}

/** Seconds that somebody with a greatest oxygen uptake takes for a distance. */
export function secondsFor(uptake: number, metres: number): number {
  // The longer a race takes, the less uptake it implies: the time is between these two.
  let [fast, slow] = [metres / 12, metres / 0.5];
  for (let turn = 0; turn < 60; turn += 1) {
    const seconds = (fast + slow) / 2;
    if (uptakeOf({ metres, seconds }) > uptake) fast = seconds;
    else slow = seconds;
  }
  return (fast + slow) / 2;
}
