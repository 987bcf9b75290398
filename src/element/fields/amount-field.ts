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
  readonly set: (value: number | null) => R;
}

/** A number that may be left out. */
export function amountField<R extends object>(
  view: FieldView<R>,
  { id, label, value, set }: AmountOptions<R>,
): TemplateResult {
  return textField(view, {
    id,
    label,
    keys: 'decimal',
    value: value === null ? '' : view.words.number(value),
    set: (text): R | Problem => {
      if (text.trim() === '') return set(null);
      const number = readNumber(text);
      return number === null ? notANumber(label, text) : set(number);
    },
  });
}
