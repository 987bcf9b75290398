/** Wait after the last change before a question is answered again: a slider that moves has other things to do. */
const quietMilliseconds = 150;

/** The answer to a question that is asked again and again: kept while nothing changes, worked out anew once it rests. */
export class Settled<T> {
  readonly #update: () => void;
  #key: readonly unknown[] | null = null;
  #value: T | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(update: () => void) {
    this.#update = update;
  }

  /** The answer for `key`; until it is there the last one, null only where there never was one that could be given. */
  get(key: readonly unknown[], work: () => T): T | null {
    if (this.#key && isSame(this.#key, key)) return this.#value;
    clearTimeout(this.#timer);
    const answer = (): void => {
      this.#key = key;
      this.#value = work();
    };
    if (this.#key === null) answer();
    else
      this.#timer = setTimeout(() => {
        answer();
        this.#update();
      }, quietMilliseconds);
    return this.#value;
  }
}

const isSame = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.length === other.length && one.every((each, index) => Object.is(each, other[index]));
