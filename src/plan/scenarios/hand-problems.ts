import type { Column } from '../../sheet/column.js';
import { withoutNoise } from '../../sheet/numbers.js';
import type { Sheet } from '../../sheet/sheet.js';
import type { Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import { categoryIds, type CategoryId } from '../../training/method/ids.js';
import { categoryQuantity } from '../../training/method/names.js';
import { sessionMinutes } from '../../training/method/session-minutes.js';
import { minutesInAWeek } from '../../training/method/rounding-block.js';

const limitNames = ['shortest', 'typical', 'longest'] as const;
const roundedIds = [...categoryIds.map((id) => categoryQuantity(id, 'rounded')), 'total_rounded'];

/**
 * What is wrong with what a person put over whole minutes and over the limits of sessions: no sessions can be made of
 * the one, or by the other. Limits are held to what a method's are.
 */
export function handProblems({ rounding }: Method, sheet: Sheet): (column: Column) => readonly Problem[] {
  const isTouched = (id: string): boolean => sheet.cells.hands.has(id);
  const isRounded = roundedIds.some(isTouched);
  const limited = categoryIds.filter((id) => limitNames.some((what) => isTouched(categoryQuantity(id, what))));
  return (column) => [
    ...(isRounded ? roundedProblems(sheet, column) : []),
    ...limited.flatMap((id) => limitProblems(sheet, column, { id, step: rounding.step })),
  ];
}

/** Minutes without a value are told of elsewhere, and whole ones then have none either. */
function roundedProblems(sheet: Sheet, column: Column): Problem[] {
  const hasMinutes = categoryIds.every((id) => Number.isFinite(column.value(categoryQuantity(id, 'minutes'))));
  if (!hasMinutes) return [];
  return roundedIds.flatMap((id) => valueProblem(sheet, column, { id, range: { least: 0, most: minutesInAWeek } }));
}

function limitProblems(
  sheet: Sheet,
  column: Column,
  { id, step }: { readonly id: CategoryId; readonly step: number },
): Problem[] {
  const names = limitNames.map((what) => categoryQuantity(id, what));
  const faulty = names.flatMap((name) => valueProblem(sheet, column, { id: name, range: sessionMinutes }));
  if (faulty.length > 0) return faulty;
  const limits = names.map((path) => ({ path, value: withoutNoise(column.value(path)) }));
  return limits.flatMap(({ path, value }, index): Problem[] => {
    const before = limits[index - 1];
    if (before && before.value > value)
      return [{ path, value, code: 'wrong-order', allowed: { before: before.path, after: path } }];
    const isOnStep = path === categoryQuantity(id, 'typical') || value % step === 0;
    return isOnStep ? [] : [{ path, value, code: 'not-a-step', allowed: { step } }];
  });
}

interface Ranged {
  readonly id: string;
  readonly range: { readonly least: number; readonly most: number };
}

function valueProblem(sheet: Sheet, column: Column, { id, range }: Ranged): Problem[] {
  const cause = sheet.explain(column, id);
  if (cause) return [{ path: id, value: null, code: 'no-value', allowed: { cause } }];
  const value = withoutNoise(column.value(id));
  const isInside = value >= range.least && value <= range.most;
  return isInside ? [] : [{ path: id, value, code: 'out-of-range', allowed: range }];
}
