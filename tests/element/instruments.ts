// What tests can be done with, besides what every engine's driver has: keys, the mouse, and windows of any size.
import { executeServerCommand } from '@web/test-runner-commands';

/** Why an engine lacks an instrument. What is not in this table, every engine has. */
const lacking = {
  chromium: {},
  firefox: {
    heap: 'no command tells how much of its heap is in use',
    print: 'printing opens a dialog that no command answers',
  },
  webkit: {
    accessibleValues: 'its driver tells role and name of an element, and neither value nor description',
    heap: 'no command tells how much of its heap is in use',
    media: 'neither WebDriver nor MiniBrowser sets media features, and WebKitGTK has no forced colours',
    print: 'printing opens a dialog that no command answers',
  },
} as const;

type Engine = keyof typeof lacking;

/** `accessibleValues`: values and descriptions, see accessibility-tree.ts; `heap`: the bytes in use; `media`: see media.ts; `print`: window.print(). */
export type Instrument = 'accessibleValues' | 'heap' | 'media' | 'print';

const engine = await executeServerCommand<Engine, undefined>('engine');

export const has = (instrument: Instrument): boolean => !(instrument in lacking[engine]);

/** Registers tests where there is what they are done with; elsewhere they are not there at all. */
export function needs(instrument: Instrument, register: () => void): void {
  if (has(instrument)) register();
}
