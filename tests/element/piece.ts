// A piece of the planner alone on a page, in a shadow root with the planner's styles.
import { fixture } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { html, LitElement, type TemplateResult } from 'lit';
import { baseStyles } from '../../src/element/base.styles.js';
import { chartStyles } from '../../src/element/chart/chart.styles.js';
import { formulaFieldStyles } from '../../src/element/formula-field/formula-field.styles.js';
import { inputsStyles } from '../../src/element/inputs/inputs.styles.js';
import { createWords } from '../../src/words/words.js';
import en from '../../shared/locales/en.json';
import './page-focus.js';

export const words = createWords('en', en, {
  'sheet.all-names': 'All quantities',
  'sheet.did-you-mean': 'Did you mean {name}?',
  'sheet.names': 'Quantities',
});

class PieceHost extends LitElement {
  static override styles = [baseStyles, inputsStyles, formulaFieldStyles, chartStyles];

  template: (() => TemplateResult) | null = null;

  protected override render(): TemplateResult {
    return html`<section class="planner">${this.template?.()}</section>`;
  }
}
customElements.define('piece-host', PieceHost);

export class Piece {
  readonly element: PieceHost;

  constructor(element: PieceHost) {
    this.element = element;
  }

  get root(): ShadowRoot {
    const { shadowRoot } = this.element;
    if (!shadowRoot) throw new Error('the piece has no shadow root');
    return shadowRoot;
  }

  async show(template: () => TemplateResult): Promise<this> {
    this.element.template = template;
    return this.settled();
  }

  async settled(): Promise<this> {
    this.element.requestUpdate();
    await this.element.updateComplete;
    return this;
  }

  /** The one that there has to be. */
  find<T extends Element = HTMLElement>(selector: string): T {
    const found = this.root.querySelector<T>(selector);
    if (!found) throw new Error(`there is no ${selector}`);
    return found;
  }

  all<T extends Element = HTMLElement>(selector: string): T[] {
    return [...this.root.querySelectorAll<T>(selector)];
  }

  async press(...keys: string[]): Promise<this> {
    for (const press of keys) await sendKeys({ press });
    return this.settled();
  }

  async type(text: string): Promise<this> {
    await sendKeys({ type: text });
    return this.settled();
  }

  /** Presses with the mouse at a place of what is there, by default its middle. */
  async mouse(target: Element, type: 'click' | 'move' = 'click', [x, y] = [0.5, 0.5]): Promise<this> {
    target.scrollIntoView({ block: 'center' });
    const { left, top, width, height } = target.getBoundingClientRect();
    await sendMouse({ type, position: [Math.round(left + x * width), Math.round(top + y * height)] });
    return this.settled();
  }
}

export async function openPiece(): Promise<Piece> {
  return new Piece(await fixture<PieceHost>('<piece-host></piece-host>'));
}
