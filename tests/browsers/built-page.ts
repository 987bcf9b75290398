// A built page in a frame, as a page on the web loads the tag.
import { waitUntil } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../src/index.js';

declare global {
  interface Window {
    /** What watch.js has heard. */
    readonly heard?: readonly string[];
  }
}

/** Panels that are fetched when a page shows them. */
export const latePanels = [
  ...['sheet', 'week', 'season', 'running', 'strength', 'checks', 'basis', 'record', 'handout'],
] as const;

export class BuiltPage {
  readonly frame: HTMLIFrameElement;

  constructor(frame: HTMLIFrameElement) {
    this.frame = frame;
  }

  get window(): Window & typeof globalThis {
    const { contentWindow } = this.frame;
    if (!contentWindow) throw new Error('the frame is not on the page');
    return contentWindow as Window & typeof globalThis;
  }

  get document(): Document {
    return this.window.document;
  }

  get planner(): WeekwrightPlanner {
    const planner = this.document.querySelector('weekwright-planner');
    if (!planner) throw new Error('there is no planner');
    return planner;
  }

  get root(): ShadowRoot {
    const { shadowRoot } = this.planner;
    if (!shadowRoot) throw new Error('the planner has no shadow root');
    return shadowRoot;
  }

  /** What went wrong so far. */
  get heard(): readonly string[] {
    const { heard } = this.window;
    if (!heard) throw new Error('nobody listens');
    return heard;
  }

  /** Paths of everything fetched so far, the page itself apart. */
  get fetched(): string[] {
    return this.window.performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname);
  }

  all<T extends Element = HTMLElement>(selector: string): T[] {
    return [...this.root.querySelectorAll<T>(selector)];
  }

  /** Puts a tag on the page, which may not know it yet. */
  put(attributes: string, content = ''): this {
    this.document.body.insertAdjacentHTML(
      'beforeend',
      `<weekwright-planner ${attributes}>${content}</weekwright-planner>`,
    );
    return this;
  }

  /** Loads a script as a page does, and waits for the tag. */
  async load(src: string): Promise<this> {
    const script = this.document.createElement('script');
    Object.assign(script, { type: 'module', src });
    await new Promise((done, failed) => {
      script.addEventListener('load', done);
      script.addEventListener('error', () => failed(new Error(`${src} does not load; npm run build makes it`)));
      this.document.head.append(script);
    });
    await this.window.customElements.whenDefined('weekwright-planner');
    return this.settled();
  }

  async settled(): Promise<this> {
    await this.planner.updateComplete;
    return this;
  }

  /** Has the planner show panels, and waits until all of them are there. */
  async show(panels: readonly string[]): Promise<this> {
    this.planner.panels = panels.join(' ');
    await this.settled();
    const late = latePanels.filter((name) => panels.includes(name));
    const missing = (): string[] =>
      late.filter((name) => !this.root.querySelector(`[part=${name}]`)?.firstElementChild);
    await waitUntil(() => missing().length === 0, 'every panel is there', { timeout: 15_000 });
    return this.settled();
  }

  /** Until nothing more is fetched. */
  async rests(): Promise<this> {
    let before = -1;
    while (this.fetched.length > before) {
      before = this.fetched.length;
      await new Promise((done) => setTimeout(done, 700));
    }
    return this;
  }
}

/** Opens a page of the project by its path; a page that was opened before is closed. */
export async function openBuilt(path: string): Promise<BuiltPage> {
  document.querySelector('iframe')?.remove();
  const frame = document.createElement('iframe');
  Object.assign(frame, { width: '800', height: '600', src: `/pages/${path}` });
  const loaded = new Promise((done) => {
    frame.addEventListener('load', done, { once: true });
  });
  document.body.append(frame);
  await loaded;
  return new BuiltPage(frame);
}

export const openEmpty = (): Promise<BuiltPage> => openBuilt('tests/browsers/empty.html');
