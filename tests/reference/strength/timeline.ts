/** Sets of a movement as a person sees them; seconds. */
export interface Sets {
  readonly name: string;
  readonly sets: number;
  /** Of one set, both sides included. */
  readonly work: number;
  /** What it needs between two sets. */
  readonly rest: number;
}

/** One set on the clock. */
export interface OnTheClock {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/**
 * Goes through a block with a watch: a set of each in turn, with the way to the other in between, then the rest of the
 * block; who is alone rests as long as it needs. Written from the words of the document, set by set, without its sums.
 */
export function timeline(exercises: readonly Sets[], rest: number, between: number): readonly OnTheClock[] {
  const clock: OnTheClock[] = [];
  const left = new Map(exercises.map(({ name, sets }) => [name, sets]));
  let now = 0;
  for (;;) {
    const turn = exercises.filter(({ name }) => (left.get(name) ?? 0) > 0);
    if (turn.length === 0) return clock;
    if (clock.length > 0) now += turn.length === exercises.length ? rest : (turn[0]?.rest ?? NaN);
    turn.forEach(({ name, work }, index) => {
      if (index > 0) now += between;
      clock.push({ name, from: now, to: now + work });
      now += work;
      left.set(name, (left.get(name) ?? 0) - 1);
    });
  }
}
