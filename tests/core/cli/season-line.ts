import { planWeek, type PlanSeason } from '../../../src/plan.js';
import { jsonOf } from './pages.js';

export const usualLine = 'season --hours 4 --most-hours 6 --event half-marathon --date 2027-04-11 --weeks 16';

/** The usual line with more options. */
export const also = (...more: readonly string[]): readonly string[] => [...usualLine.split(' '), ...more];

/** The season that the planner gives for the same wishes. */
export function plannedSeason(season: object, others: object = {}): PlanSeason {
  const plan = planWeek({ hours: 4, event: 'half-marathon', ...others, season });
  if (!plan.ok || !plan.value.season) throw new Error('there is no season');
  return plan.value.season;
}

/** What `--json` prints. */
interface SeasonDocument extends PlanSeason {
  readonly format: string;
  readonly version: number;
  readonly method: { readonly id: string };
  readonly inputs: Readonly<Record<string, unknown>>;
}

/** The document of a line that is answered. */
export async function documentOf(argv: readonly string[], files: Readonly<Record<string, string>> = {}) {
  return (await jsonOf(argv, { files })) as SeasonDocument;
}
