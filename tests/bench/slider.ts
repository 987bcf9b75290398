/** Weekly hours as a slider gives them when it is moved up to its end and down again, a quarter of an hour a step. */
const upwards = Array.from({ length: 79 }, (_, step) => 0.5 + step / 4);
const there: readonly number[] = [...upwards, ...upwards.slice(1, -1).reverse()];

export const sliderEvents = there.length;

export function hoursAt(event: number): number {
  return there[event % sliderEvents] ?? NaN;
}
