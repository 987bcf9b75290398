import type { ReactiveController } from 'lit';
import type { FormPart, FormSeat } from '../form/form-part.js';

/** The planner as a field of a form; what that takes is fetched where there is a form or a label, or a value is set. */
export class FormController implements ReactiveController {
  part: FormPart | null = null;
  /** Settles when the form has what it was last told. */
  ready: Promise<void> = Promise.resolve();
  readonly #seat: FormSeat;

  constructor(seat: FormSeat) {
    this.#seat = seat;
    seat.host.addController(this);
  }

  hostUpdated(): void {
    const { form, labels } = this.#seat.internals;
    if (this.part) this.part.update();
    else if (form ?? labels.length) this.do('update');
  }

  /** Has it do something as soon as it is there. */
  do(act: 'update' | 'reset' | 'take', text = ''): void {
    this.ready = import('../form/form-part.js').then(
      ({ FormPart }) => {
        (this.part ??= new FormPart(this.#seat))[act](text);
      },
      () => undefined, // The network is gone: the planner works on.
    );
  }
}
