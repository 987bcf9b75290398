/** Work that can be done a bit at a time: whoever does it may do something else in between, or leave it. */
export type Steps<T> = Generator<undefined, T>;

/** Does all the steps at once. */
export function allAtOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
}
