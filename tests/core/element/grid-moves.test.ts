import { describe, expect, test } from 'vitest';
import { gridBlock, gridMove, type GridKey } from '../../../src/element/sheet/grid-moves.js';

const shape = { rows: Array.from({ length: 25 }, (_, row) => `r${String(row)}`), columns: ['name', 'a', 'b', 'c'] };
const place = (row: number, column: number) => ({ row: `r${String(row)}`, column: shape.columns[column] ?? '' });
const press = (key: string, more: Partial<GridKey> = {}): GridKey => ({
  key,
  ctrlKey: false,
  isMirrored: false,
  ...more,
});

/* Keys: ARIA Authoring Practices Guide, grid pattern; how far the page keys go is ours. */
describe('gridMove(place, key, shape)', () => {
  const [ctrl, mirrored] = [{ ctrlKey: true }, { isMirrored: true }];

  test.each<[what: string, from: [number, number], key: GridKey, to: [number, number]]>([
    ['up', [12, 1], press('ArrowUp'), [11, 1]],
    ['down', [12, 1], press('ArrowDown'), [13, 1]],
    ['left', [12, 1], press('ArrowLeft'), [12, 0]],
    ['right', [12, 1], press('ArrowRight'), [12, 2]],
    ['a page up', [12, 1], press('PageUp'), [2, 1]],
    ['a page down', [12, 1], press('PageDown'), [22, 1]],
    ['to the first column', [12, 2], press('Home'), [12, 0]],
    ['to the last column', [12, 2], press('End'), [12, 3]],
    ['to the first cell', [12, 2], press('Home', ctrl), [0, 0]],
    ['to the last cell', [12, 2], press('End', ctrl), [24, 3]],
    ['left on a mirrored page', [12, 1], press('ArrowLeft', mirrored), [12, 2]],
    ['right on a mirrored page', [12, 1], press('ArrowRight', mirrored), [12, 0]],
    ['up on a mirrored page', [12, 1], press('ArrowUp', mirrored), [11, 1]],
    ['to the first column on a mirrored page', [12, 2], press('Home', mirrored), [12, 0]],
    ['up at the top', [0, 1], press('ArrowUp'), [0, 1]],
    ['down at the bottom', [24, 1], press('ArrowDown'), [24, 1]],
    ['left at the left edge', [3, 0], press('ArrowLeft'), [3, 0]],
    ['right at the right edge', [3, 3], press('ArrowRight'), [3, 3]],
    ['right at the left edge of a mirrored page', [3, 0], press('ArrowRight', mirrored), [3, 0]],
    ['a page up near the top', [4, 1], press('PageUp'), [0, 1]],
    ['a page down near the bottom', [20, 1], press('PageDown'), [24, 1]],
  ])('%s', (_, from, key, to) => {
    expect(gridMove(place(...from), key, shape)).toEqual(place(...to));
  });

  test.each(['Enter', 'Tab', 'Escape', 'F2', ' ', 'a', '', 'toString', 'constructor'])('is null for "%s"', (key) => {
    expect(gridMove(place(1, 1), press(key), shape)).toBeNull();
  });

  test('goes on from the top where the row or the column is gone', () => {
    expect(gridMove({ row: 'gone', column: 'b' }, press('ArrowDown'), shape)).toEqual(place(1, 2));
    expect(gridMove({ row: 'r3', column: 'gone' }, press('ArrowRight'), shape)).toEqual(place(3, 1));
  });

  test('stays in a grid without cells', () => {
    expect(gridMove(place(1, 1), press('End', ctrl), { rows: [], columns: [] })).toEqual(place(1, 1));
  });
});

describe('gridBlock(one, other, shape)', () => {
  const corners = (one: [number, number], other: [number, number]) => gridBlock(place(...one), place(...other), shape);
  const block = { rows: ['r2', 'r3', 'r4'], columns: ['a', 'b'] };

  test('is the rows and columns between two places, whichever way they lie', () => {
    expect(corners([2, 1], [4, 2])).toEqual(block);
    expect(corners([4, 2], [2, 1])).toEqual(block);
    expect(corners([2, 2], [4, 1])).toEqual(block);
  });

  test('is one cell, a row, or everything', () => {
    expect(corners([2, 1], [2, 1])).toEqual({ rows: ['r2'], columns: ['a'] });
    expect(corners([2, 0], [2, 3])).toEqual({ rows: ['r2'], columns: shape.columns });
    expect(corners([0, 0], [24, 3])).toEqual(shape);
  });

  test('counts rows past the ninth by their place, not by their name', () => {
    expect(corners([9, 1], [11, 1]).rows).toEqual(['r9', 'r10', 'r11']);
  });
});
