import { ruledChains } from './chains.js';
import type { SheetModel } from './model.js';
import { unpackProgram, type PackedProgram } from './packed-program.js';
import type { Sheet } from './sheet.js';

/**
 * A sheet whose program was linked before, from the same model. Such a sheet is tried out when it is packed, so it does
 * without what traces a failure to its cause; a cell that fails all the same says only that it does.
 */
export function unpackSheet(model: SheetModel, packed: PackedProgram): Sheet {
  const cells = ruledChains(model);
  return {
    model,
    cells,
    program: unpackProgram(packed, model, cells.names),
    explain: (column, id) => (Number.isFinite(column.value(id)) ? null : { code: 'not-a-number', operation: id }),
    hands: null,
  };
}
