/*
 * Daniels and Gilbert 1979 once more, written from the print and not from the source: shared/checks/running.json, `cost`
 * and `held`. Nothing here is found by bisection, as it is there.
 */

/** Millilitres a kilogram a minute at a speed in metres a minute. */
export const costByPrint = (speed: number): number => -4.6 + 0.182258 * speed + 0.000104 * speed * speed;

/** The share held for so many minutes. */
export const heldByPrint = (minutes: number): number =>
  0.8 + 0.1894393 * Math.E ** (-0.012778 * minutes) + 0.2989558 * Math.E ** (-0.1932605 * minutes);

/** The uptake that a race implies. */
export const uptakeByPrint = (metres: number, seconds: number): number =>
  costByPrint((metres * 60) / seconds) / heldByPrint(seconds / 60);

/** The speed for an oxygen uptake, by Newton's method. */
export function speedByNewton(oxygen: number): number {
  let speed = 200;
  for (let turn = 0; turn < 50; turn += 1) speed -= (costByPrint(speed) - oxygen) / (0.182258 + 2 * 0.000104 * speed);
  return speed;
}

/**
 * Seconds for a distance, by the authors' own scheme: the time t with v(index × F(t)) × t = D. Each turn takes the share
 * held of the time before; it changes so little with time that the turns close in on one.
 */
export function secondsByTurns(uptake: number, metres: number): number {
  let minutes = metres / 200;
  for (let turn = 0; turn < 400; turn += 1) minutes = metres / speedByNewton(uptake * heldByPrint(minutes));
  return minutes * 60;
}
