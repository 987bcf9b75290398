import { csvFormatRows } from 'd3-dsv';
import type { Notice, Plan } from '../plan.js';
import { categoryIds } from '../training/method/ids.js';
import { inputColumns } from './roster-fields.js';

/** A plan and whose it is. */
export interface NamedPlan {
  readonly name: string;
  readonly plan: Plan;
}

/** A plan document a line, with the name in front. */
export function rosterNdjson(plans: readonly NamedPlan[]): string {
  return plans.map(({ name, plan }) => `${JSON.stringify({ name, ...plan })}\n`).join('');
}

const columns: readonly string[] = [
  ...inputColumns,
  'split',
  ...categoryIds.map((id) => `${id}_minutes`),
  'total_minutes',
  ...categoryIds.map((id) => `${id}_sessions`),
  'rules',
  'notices',
  'week_cost',
];

/**
 * A table with a header: the inputs, planned minutes and sessions by category, ids of rules that acted and notices, what
 * the week laid on days costs (or that nothing fits).
 */
export function rosterCsv(plans: readonly NamedPlan[]): string {
  return `${csvFormatRows([[...columns], ...plans.map(cells)])}\n`;
}

function cells({ name, plan }: NamedPlan): string[] {
  const { hours, phase, level, event, strengthCap } = plan.inputs;
  return [
    ...[name, hours, phase, level, event, strengthCap, plan.split.id].map(String),
    ...categoryIds.map((id) => String(plan.rounded[id])),
    String(plan.total.rounded),
    ...categoryIds.map((id) => plan.sessions[id].join('+')),
    plan.rules.flatMap(({ id, kind, acted }) => (kind === 'change' && acted ? [id] : [])).join(' '),
    plan.notices.map(noticeId).join(' '),
    plan.week === null ? '' : String(plan.week.cost ?? plan.week.state),
  ];
}

const noticeId = ({ code, rule, category, quantity }: Notice): string =>
  code === 'rule' && rule !== undefined ? rule : [code, category ?? quantity].filter(Boolean).join(':');
