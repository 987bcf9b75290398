import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Wait after the last change before it is told: a slider that moves must not chatter. */
const quietMilliseconds = 700;

/** Holds what a screen reader is told once changes have settled. */
export class StatusController implements ReactiveController {
  text = '';
  readonly #host: ReactiveControllerHost;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Says the message when nothing has changed for a while; `message` is made only then. */
  tell(message: () => string): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.text = message();
      this.#host.requestUpdate();
    }, quietMilliseconds);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
  }
}
