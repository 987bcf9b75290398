import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleSwitches } from '../../src/sheet/explore/switches.js';
import { turningPoints } from '../../src/sheet/explore/turning-points.js';
import { workBackwards } from '../../src/sheet/explore/work-backwards.js';
import type { Column } from '../../src/sheet/column.js';
import { createColumn, type Sheet } from '../../src/sheet/sheet.js';
import { curveSheet, quarters } from '../core/sheet/explore/ranges.js';
import { ruleOf } from '../core/sheet/sheet-of.js';
import { patience, runs } from './runs.js';

/** Places of the dense search: 1/1024 apart, and off every round number so that no jump is met head on. */
const width = 1 / 1024;
const dense = Array.from({ length: 10 / width }, (_, index) => (index + 0.4321) * width);
/** What two samples may hide: events nearer to one another are not asked for. */
const apart = 0.25 / 8 + 2 * width;

const tenth = fc.integer({ min: 0, max: 100 }).map((tenths) => String(tenths / 10));
const factor = fc.integer({ min: -3, max: 3 }).map(String);
const line = fc.tuple(factor, tenth).map(([slope, offset]) => `(${slope} * x + ${offset})`);
const piece = fc.oneof(
  line,
  fc.tuple(line, line).map(([one, other]) => `min(${one}, ${other})`),
  fc.tuple(line, line).map(([one, other]) => `max(${one}, ${other})`),
  fc.tuple(factor, tenth).map(([slope, at]) => `${slope} * (x - ${at}) * (x - ${at}) / 4`),
  line.map((inside) => `floor(${inside})`),
  line.map((inside) => `round(${inside} / 2) * 2`),
  fc.tuple(line, tenth).map(([inside, at]) => `(x > ${at} ? ${inside} : 1)`),
  fc.tuple(tenth).map(([at]) => `sqrt(x - ${at})`),
);
const rule = fc.record({
  when: fc
    .tuple(fc.constantFrom('x', 'value'), fc.constantFrom('<', '<=', '>', '>='), tenth)
    .map((parts) => parts.join(' ')),
  value: fc.oneof(tenth, line, fc.constant('min(value, 5)'), fc.constant('value / 2 + 1')),
});
const sheets = fc
  .record({ pieces: fc.array(piece, { minLength: 1, maxLength: 3 }), rules: fc.array(rule, { maxLength: 2 }) })
  .map(({ pieces, rules }): Sheet => {
    const named = rules.map((each, index) => ruleOf({ id: `r${String(index)}`, on: 'y', ...each }));
    return curveSheet(pieces.join(' + '), { rules: named });
  });

const valueAt = (column: Column, x: number): number => {
  column.set({ x });
  return column.value('y');
};

/** The steepest curve rises by 40 for each hour: what does more in so short a while has jumped. */
const isJump = (below: number, above: number): boolean => !(Math.abs(above - below) < 40 * width);

/** Places, none of which is near another, between which a state changes. */
function changes<T>(states: readonly T[]): number[] {
  const all = dense.slice(1).filter((_, index) => !Object.is(states[index], states[index + 1]));
  return all.filter((at, index) => {
    const [before = -1, after = 11] = [all[index - 1], all[index + 1]];
    return at - before > apart && after - at > apart && at > apart && at < 10 - apart;
  });
}

describe('turning points', { timeout: patience }, () => {
  it('are all that a dense search finds, and each one turns the switch', () => {
    fc.assert(
      fc.property(sheets, (sheet) => {
        const column = createColumn(sheet);
        const switches = ruleSwitches(sheet);
        const points = turningPoints(column, quarters, switches);
        for (const { id, isOn } of switches) {
          const stateAt = (x: number): boolean => (column.set({ x }), isOn(column));
          const own = points.filter((point) => point.id === id);
          const missed = changes(dense.map(stateAt)).filter(
            (at) => !own.some((point) => Math.abs(point.at - at) <= width * 1.01),
          );
          expect(missed).toEqual([]);
          for (const { at, starts, includes } of own) expect(stateAt(at)).toBe(includes === starts);
          own.forEach(({ starts }, index) => expect(index === 0 || starts !== own[index - 1]?.starts).toBe(true));
        }
      }),
      runs(60, 5000),
    );
  });
});

describe('working backwards', { timeout: patience }, () => {
  const targets = fc.integer({ min: -20, max: 60 }).map((halves) => halves / 2);

  it('finds all that a dense search finds, and nothing that is none', () => {
    fc.assert(
      fc.property(sheets, targets, fc.boolean(), (sheet, target, withSwitches) => {
        const column = createColumn(sheet);
        const switches = withSwitches ? ruleSwitches(sheet) : [];
        const { solutions, nearest, failsSomewhere } = workBackwards(column, quarters, {
          measure: 'y',
          target,
          switches,
        });
        const values = dense.map((x) => valueAt(column, x));
        const isOn = (value: number): boolean => Math.abs(value - target) <= 1e-8 * Math.max(1, Math.abs(target));
        const covers = (at: number): boolean =>
          solutions.some(({ from, to }) => from - 1.01 * width <= at && at <= to + 1.01 * width);

        for (const { from, to, includesFrom, includesTo } of solutions) {
          const inside = from + (to - from) / 2;
          const claimed = [...(includesFrom ? [from] : []), inside, ...(includesTo ? [to] : [])];
          expect(claimed.filter((at) => !isOn(valueAt(column, at)))).toEqual([]);
        }
        expect(solutions.every(({ from }, index) => index === 0 || from >= (solutions[index - 1]?.to ?? NaN))).toBe(
          true,
        );

        const sides = values.map((value) => (isOn(value) ? 0 : Math.sign(value - target)));
        const crossed = changes(sides).filter((at) => {
          const [below, above] = [valueAt(column, at - width), valueAt(column, at)];
          return !isJump(below, above);
        });
        const onTarget = dense.filter(
          (_, index) => sides[index - 1] === 0 && sides[index] === 0 && sides[index + 1] === 0,
        );
        expect([...crossed, ...onTarget].filter((at) => !covers(at))).toEqual([]);

        if (values.some(Number.isNaN)) expect(failsSomewhere).toBe(true);
        const gaps = values.map((value) => Math.abs(value - target)).filter(Number.isFinite);
        if (solutions.length > 0) expect(nearest).toBeNull();
        else if (gaps.length > 0) expect(nearest).not.toBeNull();
        if (nearest === null) return;
        const best = values.findIndex((value) => Math.abs(value - target) === Math.min(...gaps));
        const around = values.slice(Math.max(0, best - apart / width), best + apart / width);
        // Between two jumps closer than samples nobody looks; a piece of the curve there moves by no more than this.
        const slack =
          around.filter((value, index) => isJump(value, around[index + 1] ?? value)).length > 1 ? 40 * apart : 1e-6;
        expect(Math.abs(nearest.value - target)).toBeLessThanOrEqual(Math.min(...gaps) + slack);
        if (nearest.isReached) expect(valueAt(column, nearest.at)).toBeCloseTo(nearest.value, 9);
      }),
      runs(150, 10_000),
    );
  });

  it('finds the one answer of a rising measure, wherever it is', () => {
    const rise = fc.double({ min: 0.01, max: 50, noNaN: true });
    const place = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(rise, rise, place, (linear, square, at) => {
        const column = createColumn(curveSheet('a * x + b * x * x', { constants: { a: linear, b: square } }));
        const target = linear * at + square * at * at;
        const { solutions } = workBackwards(column, quarters, { measure: 'y', target });
        expect(solutions).toHaveLength(1);
        expect(Math.abs((solutions[0]?.from ?? NaN) - at)).toBeLessThanOrEqual(1e-9 * Math.max(at, 1e-3));
        expect(solutions[0]?.to).toBe(solutions[0]?.from);
      }),
      runs(200, 20_000),
    );
  });
});
