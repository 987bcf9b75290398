/** A distance run in a time. */
export interface RunTime {
  readonly metres: number;
  readonly seconds: number;
}

/** How fast times grow with the distance: ten per cent more of it takes 1.06 times ten per cent longer. */
const fatigue = 1.06;

/**
 * The time that equals another one over another distance, in seconds.
 *
 * Source: Riegel PS. Athletic records and human endurance. American Scientist 1981;69(3):285–290; found for races of
 * 3.5 to 230 minutes.
 *
 * @example Math.round(riegelSeconds({ metres: 5000, seconds: 1200 }, 10000)) // 2502
 */
export const riegelSeconds = ({ metres, seconds }: RunTime, over: number): number =>
  seconds * (over / metres) ** fatigue;
