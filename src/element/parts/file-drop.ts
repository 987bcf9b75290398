/** Files that are dropped on a planner. */
export class FileDrop {
  readonly #host: HTMLElement;
  readonly #take: (file: File) => Promise<void>;
  #place: HTMLElement | null = null;

  constructor(host: HTMLElement, take: (file: File) => Promise<void>) {
    this.#host = host;
    this.#take = take;
    for (const type of ['dragenter', 'dragover', 'dragleave', 'drop'] as const)
      host.addEventListener(type, (event) => {
        this.#handle(event);
      });
  }

  /** Files may be dropped while this place is on show. */
  listen(place: HTMLElement): void {
    this.#place = place;
  }

  #handle(event: DragEvent): void {
    const place = this.#place;
    if (!place?.isConnected || !event.dataTransfer?.types.includes('Files')) return;
    // Without this the browser would leave the page for the file.
    event.preventDefault();
    if (this.#host.matches(':disabled')) return;
    const isLeft = event.type === 'dragleave' && !this.#isInside(event.relatedTarget);
    place.toggleAttribute('data-drop', event.type !== 'drop' && !isLeft);
    const [file] = event.type === 'drop' ? event.dataTransfer.files : [];
    if (file) void this.#take(file);
  }

  #isInside(target: EventTarget | null): boolean {
    return target instanceof Node && this.#host.contains(target);
  }
}
