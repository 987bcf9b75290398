import type { Method } from '../../training/method/document.js';
import { inputQuantities } from '../inputs.js';
import { categoryIds, type CategoryId } from '../../training/method/ids.js';
import { dayQuantities, weekCost } from '../../training/method/week-names.js';
import {
  categoryQuantity,
  noticeQuantity,
  splitQuantity,
  splitShareQuantity,
  strengthUpkeep,
} from '../../training/method/names.js';

/** A line of the sheet: a quantity, the sessions of a category, or a rule. */
export type SheetRow =
  | { readonly kind: 'quantity'; readonly id: string; readonly quantity: string }
  | { readonly kind: 'sessions'; readonly id: string; readonly category: CategoryId }
  | { readonly kind: 'rule'; readonly id: string; readonly rule: string };

/** The groups in which the sheet shows its rows, in the order of the screen. */
export const groupIds = [
  'planned',
  'sessions',
  'minutes',
  'shares',
  'own',
  'rules',
  'checks',
  'inputs',
  'limits',
  'splits',
] as const;
export type GroupId = (typeof groupIds)[number];

export interface RowGroup {
  readonly id: GroupId;
  readonly rows: readonly SheetRow[];
}

/** What a sheet has beyond its method's rows. */
export interface MoreRows {
  /** True where sessions are laid on days. */
  readonly hasDays?: boolean;
  /** The quantities that checks bring. */
  readonly checks?: readonly string[];
}

/** Every row of a method's sheet, in groups; a group without rows is left out. */
export function rowGroups(method: Method, { hasDays = false, checks = [] }: MoreRows = {}): readonly RowGroup[] {
  const more = (id: GroupId): readonly SheetRow[] =>
    id === 'checks' ? quantities(checks) : hasDays ? (dayRows[id] ?? []) : [];
  const groups = groupIds.map((id) => ({ id, rows: [...rowsOf[id](method), ...more(id)] }));
  return groups.filter(({ rows }) => rows.length > 0);
}

const quantities = (ids: readonly string[]): SheetRow[] =>
  ids.map((quantity) => ({ kind: 'quantity', id: quantity, quantity }));

const ofCategories = (what: 'share' | 'minutes' | 'rounded', ...others: readonly string[]): SheetRow[] =>
  quantities([...categoryIds.map((id) => categoryQuantity(id, what)), ...others]);

const dayRows: Readonly<Partial<Record<GroupId, readonly SheetRow[]>>> = {
  planned: quantities([weekCost]),
  inputs: quantities(dayQuantities),
};

const rowsOf: Readonly<Record<GroupId, (method: Method) => readonly SheetRow[]>> = {
  planned: () => ofCategories('rounded', 'total_rounded'),
  sessions: () => categoryIds.map((category) => ({ kind: 'sessions', id: `sessions ${category}`, category })),
  minutes: () => ofCategories('minutes', 'planned_minutes', 'running_minutes'),
  shares: () => ofCategories('share', 'running_share'),
  own: ({ quantities: own = [] }) => quantities(own.map(({ id }) => id)),
  rules: ({ rules }) => rules.map(({ id }) => ({ kind: 'rule', id: `rule ${id}`, rule: id })),
  checks: () => [],
  inputs: () => quantities(Object.values(inputQuantities)),
  limits: () =>
    quantities([
      ...categoryIds.flatMap((id) =>
        (['shortest', 'typical', 'longest'] as const).map((what) => categoryQuantity(id, what)),
      ),
      strengthUpkeep,
    ]),
  splits: ({ splits, rules }) =>
    quantities([
      ...splits.flatMap(({ id, when }) => [
        ...(when === undefined ? [] : [splitQuantity(id)]),
        ...categoryIds.map((category) => splitShareQuantity(id, category)),
      ]),
      ...rules.flatMap(({ id, kind, enabled = true }) => (kind === 'notice' && enabled ? [noticeQuantity(id)] : [])),
      'weekly_minutes',
    ]),
};
