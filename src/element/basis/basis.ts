import { render } from 'lit';
import { concreteStyles } from '../concrete/concrete.styles.js';
import type { FullView, LatePanel } from '../controllers/late-panel-controller.js';
import { lateStyles } from '../late.styles.js';
import { basisPanel } from './basis-panel.js';

/** What every number of a planner rests on; fetched where a page shows it. */
export class Basis implements LatePanel {
  outdate(): void {
    // All is rendered at once.
  }

  render(container: HTMLElement, view: FullView): boolean {
    render(basisPanel(view), container);
    return false;
  }
}

export const load = () => ({ styles: [lateStyles, concreteStyles], panel: new Basis() });
