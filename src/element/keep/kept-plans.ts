import type { Words } from '../../words/words.js';
import { today } from '../today.js';
import { writeKeptText, type KeptPlan } from '../../exchange/kept-file.js';

/** What came of the last act on what is kept. */
export interface KeepMessage {
  readonly key: 'kept' | 'kept-all' | 'replaced' | 'unnamed' | 'taken-out' | 'put-back.done' | 'wiped' | 'refused';
  readonly name?: string;
}

/** What a person keeps on this device, as far as it is known. */
export class KeptPlans {
  /** Null until somebody has looked. */
  plans: readonly KeptPlan[] | null = null;
  message: KeepMessage | null = null;
  /** What the last act took out or replaced, and can be put back until the next one. */
  before: readonly KeptPlan[] = [];
  /** True where wiping was asked for, and not yet confirmed. */
  isWiping = false;
  readonly #update: () => void;
  #isLooking = false;

  constructor(update: () => void) {
    this.#update = update;
  }

  /** Looks what there is, once. */
  look(): void {
    if (this.plans !== null || this.#isLooking) return;
    this.#isLooking = true;
    void this.#do(null, async () => Promise.resolve());
  }

  /** Keeps a plan under its name; one that is there already is replaced. */
  async keep(name: string, text: string): Promise<void> {
    if (name === '') {
      this.#say({ key: 'unnamed' });
      return;
    }
    const before = this.#called([name]);
    const key = before.length > 0 ? 'replaced' : 'kept';
    await this.#do({ key, name }, ({ keep }) => keep({ name, kept: today(), text }), before);
  }

  /** Keeps plans that came in one file; those with the same names are replaced. */
  async keepAll(plans: readonly KeptPlan[]): Promise<void> {
    const before = this.#called(plans.map(({ name }) => name));
    await this.#do({ key: 'kept-all' }, keepEach(plans), before);
  }

  async takeOut(name: string): Promise<void> {
    await this.#do({ key: 'taken-out', name }, ({ takeOut }) => takeOut(name), this.#called([name]));
  }

  /** Takes back what the last act did to plans that were kept. */
  async putBack(): Promise<void> {
    await this.#do({ key: 'put-back.done' }, keepEach(this.before));
  }

  askToWipe(isWiping: boolean): void {
    this.isWiping = isWiping;
    this.#update();
  }

  async wipe(): Promise<void> {
    this.isWiping = false;
    await this.#do({ key: 'wiped' }, ({ wipe }) => wipe());
  }

  /** All plans in one text, each as its file: a list of names, days and files. */
  get all(): string {
    return writeKeptText(this.plans ?? []);
  }

  /** Does something with the database, then looks again: what is shown is what is there. */
  async #do(
    message: KeepMessage | null,
    act: (shelf: Shelf) => Promise<void>,
    before: readonly KeptPlan[] = [],
  ): Promise<void> {
    try {
      const { shelf } = await import('./shelf.js');
      await act(shelf);
      this.plans = await shelf.keptPlans();
      this.before = before;
      this.#say(message);
    } catch {
      // The browser, or the page around a frame, forbids it; or there is no room.
      this.plans ??= [];
      this.#say({ key: 'refused' });
    } finally {
      this.#isLooking = false;
    }
  }

  #called(names: readonly string[]): readonly KeptPlan[] {
    return (this.plans ?? []).filter(({ name }) => names.includes(name));
  }

  #say(message: KeepMessage | null): void {
    this.message = message;
    this.#update();
  }
}

const keepEach =
  (plans: readonly KeptPlan[]) =>
  async ({ keep }: Shelf): Promise<void> => {
    for (const plan of plans) await keep(plan);
  };

type Shelf = (typeof import('./shelf.js'))['shelf'];

/** The message in words. */
export const keepMessage = (words: Words, { key, name = '' }: KeepMessage): string =>
  words.say(`keep.${key}`, { name });
