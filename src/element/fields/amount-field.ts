import type { TemplateResult } from 'lit';
import type { Problem } from '../../problem.js';
import type { Words } from '../../words/words.js';
import { readNumber } from '../../words/read-number.js';
import { notANumber } from '../inputs/not-a-number.js';
import type { FieldView } from './field-view.js';
import type { FieldOptions } from './fields.js';
import { textField } from './text-field.js';

interface AmountOptions<R> extends FieldOptions {
  /** Null where nothing is told. */
  readonly value: number | null;
  /** What is allowed where the request alone cannot tell. */
  readonly range?: { readonly least: number; readonly most: number; readonly isWhole?: boolean };
  /** True where hours and minutes may be typed: `4:15`. */
  readonly isHours?: boolean;
  readonly set: (value: number | null) => R;
}

/** A number that may be left out. */
export function amountField<R extends object>(
  view: FieldView<R>,
  { id, label, value, range, isHours = false, set }: AmountOptions<R>,
): TemplateResult {
  return textField(view, {
    id,
    label,
    keys: 'decimal',
    value: value === null ? '' : typedNumber(view.words, value),
    set: (text): R | Problem => {
      if (text.trim() === '') return set(null);
      // Hours and minutes are hours; as any other amount they would be misread.
      const number = text.includes(':') && !isHours ? null : readNumber(text);
      if (number === null) return notANumber(label, text);
      return (range && outside(label, number, range)) ?? set(number);
    },
  });
}

/** A number as people type it: with the language’s mark of decimals, and no others. */
const typedNumber = (words: Words, value: number): string => String(value).replace('.', words.number(0.5).charAt(1));

function outside(
  path: string,
  value: number,
  { least, most, isWhole = false }: NonNullable<AmountOptions<never>['range']>,
): Problem | undefined {
  if (value < least || value > most) return { path, value, code: 'out-of-range', allowed: { least, most } };
  return isWhole && !Number.isInteger(value) ? { path, value, code: 'not-a-step', allowed: { step: 1 } } : undefined;
}
