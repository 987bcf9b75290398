import { expect } from '@open-wc/testing';
import { openPlace, panelNames, type StateName } from './places.js';
import { plainFaults } from './plain.js';

/** That axe finds nothing in every panel in some states. */
export function everyState(states: readonly StateName[], counts: (fault: string) => boolean = () => true): void {
  for (const panel of panelNames)
    for (const state of states)
      it(`${panel}, ${state}`, async () => {
        expect((await plainFaults(await openPlace(panel, state))).filter(counts)).to.deep.equal([]);
      });
}
