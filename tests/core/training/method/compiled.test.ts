import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInPlanner, createPlanner } from '../../../../src/plan.js';
import { Planner } from '../../../../src/plan/planner.js';
import type { FormulaBook } from '../../../../src/sheet/formula/compiled-formula.js';
import { createSheet, formulaTexts } from '../../../../src/sheet/sheet.js';
import { builtInFormulas } from '../../../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { builtInChecks } from '../../../../src/training/method/built-in-checks.js';
import { builtInRunning } from '../../../../src/training/method/built-in-running.js';
import { builtInSeason } from '../../../../src/training/method/built-in-season.js';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import { builtInWeek } from '../../../../src/training/method/built-in-week.js';
import type { Method } from '../../../../src/training/method/document.js';
import { expandMethod } from '../../../../src/training/method/expand.js';
import { readMethod } from '../../../../src/training/method/read-method.js';
import { anyAthletes } from '../../../reference/athletes.js';
import { patience, runs } from '../../../reference/runs.js';
import { compileAll } from '../../sheet/sheet-of.js';
import { defaultDocument, plannerOf, valueOf } from './documents.js';
import { randomMethods } from './random-methods.js';

const root = fileURLToPath(new URL('../../../..', import.meta.url));

/** A planner of formulas that were all parsed just now. */
function parsedPlanner(method: Method): Planner {
  return plannerWith(method, compileAll(formulaTexts(expandMethod(method))));
}

/** A planner of formulas that were compiled before and written to a file, as those of the built-in method are. */
function compiledPlanner(method: Method): Planner {
  const written = JSON.stringify(compileAll(formulaTexts(expandMethod(method))));
  return plannerWith(method, JSON.parse(written) as FormulaBook);
}

function plannerWith(method: Method, book: FormulaBook): Planner {
  return new Planner({ method, sheet: createSheet(expandMethod(method), book) });
}

describe('what is written by `npm run compile`', () => {
  test('is what it would write now', () => {
    const check = () =>
      execFileSync(process.execPath, ['tests/tools/compile.mjs', '--check'], { cwd: root, stdio: 'pipe' });
    expect(check).not.toThrow();
  });
});

describe('the built-in method', () => {
  test('is the default document', () => {
    const { $schema: _, ...document } = defaultDocument();
    // These sections ship apart, and are fetched where a page shows what they are for.
    const apart = {
      week: builtInWeek,
      season: builtInSeason,
      running: builtInRunning,
      strength: builtInStrength,
      checks: builtInChecks,
    };
    expect({ ...builtInMethod, ...apart }).toEqual(document);
    for (const section of Object.keys(apart)) expect(builtInMethod).not.toHaveProperty(section);
  });

  test('has every formula of its sheet compiled, and no other', () => {
    const texts = formulaTexts(expandMethod(builtInMethod));
    expect(Object.keys(builtInFormulas).sort()).toEqual([...texts].sort());
    expect(builtInFormulas).toEqual(compileAll(texts));
  });

  test('gives the same plans compiled, parsed, and read as a document', async () => {
    const planners = [builtInPlanner(), parsedPlanner(builtInMethod), await plannerOf(defaultDocument())];
    fc.assert(
      fc.property(anyAthletes, (athlete) => {
        const [compiled, ...others] = planners.map((planner) => JSON.stringify(planner.plan(athlete)));
        expect(others).toEqual([compiled, compiled]);
      }),
      runs(50, 50_000),
    );
  });
});

describe('any method', { timeout: patience }, () => {
  test('gives the same plans compiled before and parsed at run time', async () => {
    let plans = 0;
    await fc.assert(
      fc.asyncProperty(
        randomMethods,
        fc.array(anyAthletes, { minLength: 2, maxLength: 4 }),
        async (document, athletes) => {
          const method = valueOf(readMethod(document));
          const created = await createPlanner(document);
          const planners = [compiledPlanner(method), parsedPlanner(method), ...(created.ok ? [created.value] : [])];
          for (const athlete of athletes) {
            const [compiled, ...others] = planners.map((planner) => planner.plan(athlete));
            for (const other of others) expect(JSON.stringify(other)).toBe(JSON.stringify(compiled));
            plans += compiled?.ok ? 1 : 0;
          }
          // A method is refused only where it has no plan for its own starting values.
          if (!created.ok) expect(compiledPlanner(method).plan({})).toEqual(created);
        },
      ),
      runs(60, 10_000),
    );
    expect(plans).toBeGreaterThan(30);
  });
});
