import { setViewport } from '@web/test-runner-commands';
import { describeWithMedia } from '../media.js';
import { everyState } from './every-state.js';
import { stateNames } from './places.js';

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

// There contrast is the system's own; axe reads colours that are not painted. See contrast.test.ts.
describeWithMedia('axe finds nothing in forced colours', { 'forced-colors': 'active' }, () => {
  everyState(stateNames, (line) => !line.startsWith('color-contrast'));
});
