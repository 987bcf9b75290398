import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { orderOf } from '../../../src/sheet/order.js';
import { createColumn } from '../../../src/sheet/sheet.js';
import { explainFailure } from '../../../src/sheet/explain-failure.js';
import { runs } from '../../reference/runs.js';
import { ruleOf, sheetOf } from './sheet-of.js';

type Reads = ReadonlyMap<string, readonly string[]>;

/** Everything that a cell reads, through whatever it reads; by brute force. */
function reachedFrom(reads: Reads, id: string): ReadonlySet<string> {
  const reached = new Set<string>();
  const visit = (each: string): void => {
    for (const read of reads.get(each) ?? [])
      if (!reached.has(read)) {
        reached.add(read);
        visit(read);
      }
  };
  visit(id);
  return reached;
}

const names = ['a', 'b', 'c', 'd', 'e', 'f'];
const anyReads: fc.Arbitrary<Reads> = fc
  .array(fc.uniqueArray(fc.constantFrom(...names, 'unknown'), { maxLength: 3 }), { minLength: 1, maxLength: 6 })
  .map((lists) => new Map(lists.map((list, index) => [names[index] ?? '', list])));

describe('orderOf(reads)', () => {
  test('puts every cell after the cells it reads, and leaves out those on a circle', () => {
    fc.assert(
      fc.property(anyReads, (reads) => {
        const { sorted } = orderOf(reads);
        const onCircle = [...reads.keys()].filter((id) => reachedFrom(reads, id).has(id));
        expect([...sorted].sort()).toEqual([...reads.keys()].filter((id) => !onCircle.includes(id)).sort());
        sorted.forEach((id, index) => {
          for (const read of reads.get(id) ?? []) expect(sorted.indexOf(read)).toBeLessThan(index);
        });
      }),
      runs(2000, 100_000),
    );
  });

  test('names for every cell on a circle a circle from it back to itself, meeting nothing twice', () => {
    fc.assert(
      fc.property(anyReads, (reads) => {
        const { circles } = orderOf(reads);
        expect([...circles.keys()].sort()).toEqual(
          [...reads.keys()].filter((id) => reachedFrom(reads, id).has(id)).sort(),
        );
        for (const [id, path] of circles) {
          expect([path[0], path.at(-1)]).toEqual([id, id]);
          expect(new Set(path.slice(1)).size).toBe(path.length - 1);
          path.slice(1).forEach((read, index) => expect(reads.get(path[index] ?? '')).toContain(read));
        }
      }),
      runs(2000, 100_000),
    );
  });

  test('finds its way through a long chain', () => {
    const chain = new Map(Array.from({ length: 2000 }, (_, index) => [`q${String(index)}`, [`q${String(index + 1)}`]]));
    expect(orderOf(chain).sorted[0]).toBe('q1999');
  });
});

describe('a circle in a sheet', () => {
  const circleOf = (parts: Parameters<typeof sheetOf>[0], id: string) =>
    explainFailure(createColumn(sheetOf({ inputs: { x: 1 }, ...parts })), id);

  test('is named by the quantities on it', () => {
    const formulas = { a: 'b + 1', b: 'c * x', c: 'a' };
    expect(circleOf({ formulas }, 'a')).toEqual({ code: 'circle', path: ['a', 'b', 'c', 'a'] });
    expect(circleOf({ formulas }, 'b')).toEqual({ code: 'circle', path: ['b', 'c', 'a', 'b'] });
  });

  test('goes through branches that are not taken: dependencies are declared, not discovered', () => {
    expect(circleOf({ formulas: { a: 'x ? 1 : a' } }, 'a')).toEqual({ code: 'circle', path: ['a', 'a'] });
  });

  test('through a rule names quantities only, each once', () => {
    const rules = [
      ruleOf({ id: 'one', on: 'a', value: 'b' }),
      ruleOf({ id: 'two', on: 'a', when: 'b > 1', value: '0' }),
    ];
    expect(circleOf({ formulas: { a: 'x', b: 'a * 2' }, rules }, 'a')).toEqual({
      code: 'circle',
      path: ['a', 'b', 'a'],
    });
  });

  test('through a block names what it writes', () => {
    const blocks = [{ id: 'block', reads: ['a'], writes: ['b'], compute: () => [1] }];
    expect(circleOf({ formulas: { a: 'b' }, blocks }, 'a')).toEqual({ code: 'circle', path: ['a', 'b', 'a'] });
    expect(circleOf({ formulas: { a: 'b' }, blocks }, 'b')).toEqual({ code: 'circle', path: ['b', 'a', 'b'] });
  });

  test('leaves every other cell its value', () => {
    const column = createColumn(sheetOf({ inputs: { x: 1 }, formulas: { a: 'b', b: 'a', c: 'x + 1' } }));
    column.set({ x: 5 });
    expect(column.value('c')).toBe(6);
  });
});
