import type { TemplateResult } from 'lit';
import type { Problem } from '../../problem.js';
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
  readonly set: (value: number | null) => R;
}

/** A number that may be left out. */
export function amountField<R extends object>(
  view: FieldView<R>,
  { id, label, value, range, set }: AmountOptions<R>,
): TemplateResult {
  return textField(view, {
    id,
    label,
    keys: 'decimal',
    value: value === null ? '' : view.words.number(value),
    set: (text): R | Problem => {
      if (text.trim() === '') return set(null);
      const number = readNumber(text);
      if (number === null) return notANumber(label, text);
      return (range && outside(label, number, range)) ?? set(number);
    },
  });
}

function outside(
  path: string,
  value: number,
  { least, most, isWhole = false }: NonNullable<AmountOptions<never>['range']>,
): Problem | undefined {
  if (value < least || value > most) return { path, value, code: 'out-of-range', allowed: { least, most } };
  return isWhole && !Number.isInteger(value) ? { path, value, code: 'not-a-step', allowed: { step: 1 } } : undefined;
}
