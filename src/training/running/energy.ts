/** Oxygen at rest, in millilitres a kilogram a minute: one multiple of the energy at rest. */
const atRest = 3.5;

/**
 * Oxygen that running on the level takes, in millilitres a kilogram a minute.
 *
 * Source: ACSM's Guidelines for Exercise Testing and Prescription, 10th ed. (2018), Table 6.3; for more than 134 metres
 * a minute, or 80 to 134 where somebody really jogs.
 *
 * @param speed in metres a minute.
 */
export const runningOxygen = (speed: number): number => atRest + 0.2 * speed;

/** Multiples of the energy at rest that running at a speed takes. */
export const runningMultiple = (speed: number): number => runningOxygen(speed) / atRest;

/**
 * Kilocalories of an activity.
 *
 * Source: the same, multiple × 3.5 × kilograms / 200 a minute; the rounder kilocalorie a kilogram an hour that is printed
 * too gives 5 % less.
 *
 * @param multiple of the energy at rest.
 * @example kilocalories(7, { minutes: 60, kilograms: 60 }) // 441
 */
export const kilocalories = (
  multiple: number,
  { minutes, kilograms }: { readonly minutes: number; readonly kilograms: number },
): number => ((multiple * atRest * kilograms) / 200) * minutes;
