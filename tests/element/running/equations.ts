// The printed equations, written down once more and solved by other means than the planner's own.

/** Seconds over another distance. Riegel PS. American Scientist 1981;69(3):285–290: T2 = T1·(D2/D1)^1.06. */
export const riegel = (seconds: number, from: number, to: number): number => seconds * (to / from) ** 1.06;

/** Oxygen uptake at metres a minute. Daniels J, Gilbert J. Oxygen Power. 1979; so is the next. */
const cost = (speed: number): number => -4.6 + 0.182258 * speed + 0.000104 * speed * speed;

/** Share of the greatest uptake that is held for so many minutes. */
const held = (minutes: number): number =>
  0.8 + 0.1894393 * Math.exp(-0.012778 * minutes) + 0.2989558 * Math.exp(-0.1932605 * minutes);

/** The greatest uptake that a race implies. */
export const uptake = (metres: number, seconds: number): number => cost((60 * metres) / seconds) / held(seconds / 60);

/** Metres a minute that take a share of an uptake: the speed is walked up to in ever smaller steps. */
export function speedAt(share: number, greatest: number): number {
  let speed = 0;
  for (let step = 128; step > 1e-7; step /= 2) while (cost(speed + step) <= share * greatest) speed += step;
  return speed;
}

/** Seconds for a distance of somebody with a greatest uptake, walked up to in the same way. */
export function secondsBy(greatest: number, metres: number): number {
  let seconds = metres / 12;
  for (let step = 4096; step > 1e-6; step /= 2) while (uptake(metres, seconds + step) >= greatest) seconds += step;
  return seconds;
}

/** Shares of the greatest uptake by kind of running: shared/methods/default.json, an assumption of ours. */
export const shares = { slow: [0.6, 0.74], tempo: [0.84, 0.89], intervals: [0.93, 1] } as const;

/** Seconds as people write them: 3:07, 1:02:03. */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  const digits = (value: number): string => `${value < 10 ? '0' : ''}${String(value)}`;
  const minutes = Math.trunc(whole / 60);
  if (minutes < 60) return `${String(minutes)}:${digits(whole % 60)}`;
  return `${String(Math.trunc(minutes / 60))}:${digits(minutes % 60)}:${digits(whole % 60)}`;
}

/** The paces of a kind as the planner shows them, in steps of five seconds: "4:40–5:35". */
export function paces(kind: keyof typeof shares, greatest: number, metres = 1000): string {
  const [least, most] = shares[kind];
  const pace = (share: number): string => clock(5 * Math.round((60 * metres) / speedAt(share, greatest) / 5));
  return `${pace(most)}–${pace(least)}`;
}
