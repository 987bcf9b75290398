import type { CategoryId } from '../../training/method/ids.js';

/** What a table of sessions tells of each, in the order in which it is written. */
export const fieldIds = ['date', 'category', 'minutes', 'effort'] as const;
export type Field = (typeof fieldIds)[number];

/** Which part of a date with the year behind comes first; `ymd`: there is none, the year is in front. */
export const dateOrders = ['ymd', 'dmy', 'mdy'] as const;
export type DateOrder = (typeof dateOrders)[number];

/**
 * What `45`, `1.5` and `45:30` mean in a column: plain minutes, decimal hours, h:mm, m:ss. With plain minutes and decimal
 * hours `1:30` is h:mm; with the other two a number alone means nothing.
 */
export type TimeStyle = 'minutes' | 'hours' | 'hms' | 'ms';

/** How a table is to be read. */
export interface Mapping {
  /** The column of each field, counted from 0; null where the table does not tell it. */
  readonly columns: Readonly<Record<Field, number | null>>;
  readonly dates: DateOrder;
  readonly times: TimeStyle;
  /** What the texts of the category column mean, by `kindKey`; null where that is not told, or they are left out. */
  readonly kinds: Readonly<Record<string, CategoryId | null>>;
}

/** The words of the page's languages for the fields and the kinds of training. */
export interface Vocabulary {
  readonly fields: Readonly<Record<Field, readonly string[]>>;
  readonly kinds: Readonly<Record<CategoryId, readonly string[]>>;
}
