import type { Outcome } from '../../problem.js';
import { readWishes } from '../../plan/week/read-wishes.js';
import type { Method } from '../../training/method/document.js';

/**
 * The minutes of the days as the attribute `days` has them, in plain digits with commas or spaces between.
 *
 * @returns seven numbers, Monday first, or what is wrong with them.
 * @example readDays('60,0,45,60,0,90,120', method) // { ok: true, value: [60, 0, 45, 60, 0, 90, 120] }
 */
export function readDays(text: string, method: Method): Outcome<readonly number[]> {
  const parts = text.split(/[\s,]+/).filter((part) => part !== '');
  const days = parts.map((part) => (/^\d+$/.test(part) ? Number(part) : part));
  const read = readWishes({ days }, method);
  if (read.ok) return { ok: true, value: read.value.days };
  return {
    ok: false,
    problems: read.problems.map((problem) => ({ ...problem, path: problem.path.replace('week.', '') })),
  };
}
