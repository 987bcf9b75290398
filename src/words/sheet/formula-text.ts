import type { Unit } from '../quantity-value.js';
import { readNumber } from '../read-number.js';

/**
 * The formula that a person means: a lone number with a comma, or in per cent, is taken as people write it; anything
 * else stays as it is.
 *
 * @example formulaText('30 %') // '0.3'
 * @example formulaText('-4,5') // '-4.5'
 */
export function formulaText(text: string): string {
  const trimmed = text.trim();
  const [, minus = '', amount = '', percent = ''] = /^([-−]?)\s*(.+?)\s*(%?)$/.exec(trimmed) ?? [];
  const number = readNumber(amount);
  if (number === null) return trimmed;
  const value = percent === '' ? number : Number((number / 100).toPrecision(12));
  return minus === '' ? String(value) : `-${value}`;
}

/**
 * The amount that somebody wants: a number, or sessions whose sum it is.
 *
 * @returns null where the text is neither.
 * @example wantedAmount('2 × 45') // 90
 * @example wantedAmount('30 + 45') // 75
 */
export function wantedAmount(text: string): number | null {
  const lone = Number(formulaText(text));
  if (text.trim() !== '' && Number.isFinite(lone)) return lone;
  const parts = text.split('+').map(sessionsSum);
  return parts.reduce<number | null>((sum, part) => (sum === null || part === null ? null : sum + part), 0);
}

/**
 * An amount as a person means it in a unit: a share is a part of the whole, so a number above 1 is per cent.
 *
 * @example amountIn('share', 40) // 0.4
 */
export function amountIn(unit: Unit, amount: number): number {
  return unit === 'share' && amount > 1 ? amount / 100 : amount;
}

function sessionsSum(part: string): number | null {
  const [, count = '1', minutes] = /^\s*(?:(\d+)\s*[x×*]\s*)?(\d+(?:[.,]\d+)?)\s*$/i.exec(part) ?? [];
  return minutes === undefined ? null : Number(count) * Number(minutes.replace(',', '.'));
}
