import { unpackSheet } from '../sheet/unpack-sheet.js';
import { builtInMethod, builtInProgram } from '../training/method/built-in.js';
import { expandMethod } from '../training/method/expand.js';
import { Planner } from './planner.js';

/**
 * A planner with the built-in method, whose formulas ship compiled: no parser is loaded.
 *
 * @param Made what to make; a planner that only divides weeks where it is left out.
 */
export function builtInPlanner(Made: typeof Planner = Planner): Planner {
  return new Made({ method: builtInMethod, sheet: unpackSheet(expandMethod(builtInMethod), builtInProgram) });
}
