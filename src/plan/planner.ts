import { Column } from '../sheet/column.js';
import { Deriver } from '../sheet/derive.js';
import { withoutNoise } from '../sheet/numbers.js';
import type { Sheet } from '../sheet/sheet.js';
import type { Outcome, Problem } from '../problem.js';
import type { Method } from '../training/method/document.js';
import { byCategory, categoryIds, type ByCategory, type CategoryId } from '../training/method/ids.js';
import type { LoadedMethod } from '../training/method/load-method.js';
import { categoryQuantity, splitQuantity } from '../training/method/names.js';
import { minutesInAWeek } from '../training/method/rounding-block.js';
import { isSessionOption, sessionOptions } from '../training/sessions/options.js';
import { PlanDerivations } from './derivations.js';
import type { Notice, Plan, PlanInputs } from './document.js';
import { noticesOf } from './notices.js';
import { inputValues } from './inputs.js';
import { readRequest, type RawRequest, type ReadRequest } from './read-request.js';
import { ruleOutcomes } from './rule-outcomes.js';
import { sessionNeed } from './session-need.js';
import type { SeasonMaker } from './season/season-maker.js';
import type { WeekMaker } from './week/week-maker.js';

/** What a planner minds where a person has put values over quantities. */
export interface Hands {
  /**
   * The inputs that the week is made from, what was put over them included, or what cannot be used of what a person put
   * over quantities; null where nothing was put over inputs.
   */
  readonly inputs: (column: Column) => Outcome<PlanInputs> | null;
  /** What is to be said of it. */
  readonly notices: (derivations: Plan['derivations']) => readonly Notice[];
}

/** What a planner can do beyond dividing a week. */
export interface PlannerParts {
  readonly hands?: Hands | undefined;
  /** Lays sessions on days; without it a request may not ask for a week. */
  readonly week?: WeekMaker | undefined;
  /** Carries weeks through a season; without it a request may not ask for one. */
  readonly season?: SeasonMaker | undefined;
}

/** Answers requests by one method. It keeps the last week computed, so that a small change costs little. */
export class Planner {
  readonly method: Method;
  /** The sheet that computes the week; what people put over its quantities is in its model. */
  readonly sheet: Sheet;
  readonly #hands: Hands | undefined;
  #week: WeekMaker | undefined;
  #season: SeasonMaker | undefined;
  readonly #column: Column;
  readonly #derivations: PlanDerivations;

  constructor({ method, sheet }: LoadedMethod, { hands, week, season }: PlannerParts = {}) {
    this.#hands = hands;
    this.#week = week;
    this.#season = season;
    this.method = method;
    this.sheet = sheet;
    this.#column = new Column(sheet.program);
    this.#derivations = new PlanDerivations(method, new Deriver(sheet, this.#column));
  }

  /**
   * The plan for a request, or what is wrong with it. The same request always gives the same plan.
   *
   * @param request a `PlanRequest`, or data from outside that has to become one: every field is checked.
   */
  plan(request: RawRequest): Outcome<Plan> {
    const read = readRequest(request, this.method, { week: this.#week, season: this.#season });
    if (!read.ok) return read;
    const { inputs, week } = read.value;
    this.#column.set({
      ...inputValues(inputs),
      ...this.#week?.inputValues(this.sheet.model, week),
      ...this.#season?.values(this.method, read.value),
    });
    const used = this.#hands?.inputs(this.#column) ?? { ok: true, value: inputs };
    const problems = used.ok ? this.#missingMinutes() : used.problems;
    if (!used.ok || problems.length > 0) return { ok: false, problems };
    const plan = this.#assemble({ ...read.value, inputs: used.value });
    const laid = this.#week?.lay(this.method, plan, read.value) ?? plan;
    const season = this.#season?.carry(this, { ...read.value, inputs: used.value }) ?? null;
    return { ok: true, value: season ? { ...laid, season } : laid };
  }

  /** From now on requests may ask for a week. */
  learnWeeks(week: WeekMaker): void {
    this.#week = week;
  }

  /** From now on requests may ask for a season. */
  learnSeasons(season: SeasonMaker): void {
    this.#season = season;
  }

  /** The week computed last, for questions about it. To be read only: `plan` sets it. */
  get column(): Column {
    return this.#column;
  }

  /** Why each quantity of that week is what it is, also where no plan came of it. */
  get derivations(): Plan['derivations'] {
    return this.#derivations.all(this.#splitUsed().id);
  }

  #assemble({ inputs, picks }: ReadRequest): Plan {
    const { method } = this;
    const split = this.#split();
    const derivations = this.#derivations.all(split.id);
    const needs = byCategory((id) => sessionNeed(method, derivations, id));
    const options = byCategory((id) => sessionOptions(needs[id]));
    const fits = (id: CategoryId): boolean => isSessionOption(picks[id] ?? [], needs[id]);
    const rounded = this.#values('rounded');
    const total = {
      exact: withoutNoise(this.#column.value('planned_minutes')),
      rounded: this.#column.value('total_rounded'),
    };
    const rules = ruleOutcomes(method, this.#column, derivations);
    const droppedPicks = categoryIds.filter((id) => picks[id] && options[id].length > 0 && !fits(id));
    return {
      format: 'weekwright-plan',
      version: 1,
      method: { id: method.id, name: method.name },
      inputs,
      split,
      minutes: this.#values('minutes'),
      rounded,
      total,
      options,
      sessions: byCategory((id) => (fits(id) ? [...(picks[id] ?? [])].sort((a, b) => a - b) : (options[id][0] ?? []))),
      rules,
      notices: noticesOf({
        method,
        rules,
        byHand: this.#hands?.notices(derivations) ?? [],
        total,
        droppedPicks,
        rounded,
        derivations,
      }),
      derivations,
      week: null,
      season: null,
      running: null,
      strength: null,
      load: null,
      checks: [],
    };
  }

  #split(): Plan['split'] {
    const { id, status } = this.#splitUsed();
    return { id, shares: this.#values('share'), status };
  }

  #splitUsed(): Method['splits'][number] {
    const split = this.method.splits.find(
      ({ id, when }) => when === undefined || this.#column.value(splitQuantity(id)) !== 0,
    );
    if (!split) throw new Error('the last split of a method has no condition');
    return split;
  }

  #values(what: 'share' | 'minutes' | 'rounded'): ByCategory<number> {
    return byCategory((id) => this.#value(id, what));
  }

  #value(id: CategoryId, what: Parameters<typeof categoryQuantity>[1]): number {
    return withoutNoise(this.#column.value(categoryQuantity(id, what)));
  }

  /** A plan needs minutes for every category; a coach's formula may fail to give them, or give more than a week has. */
  #missingMinutes(): Problem[] {
    const ofCategories = categoryIds.flatMap((id) => this.#minutesProblem(categoryQuantity(id, 'minutes')));
    if (ofCategories.length > 0) return ofCategories;
    // A rule can set minutes whatever their share: then the share alone has no value.
    const ofShares = categoryIds.flatMap((id) => this.#valueProblem(categoryQuantity(id, 'share')));
    return [...ofShares, ...this.#minutesProblem('planned_minutes')];
  }

  #minutesProblem(path: string): Problem[] {
    const value = this.#column.value(path);
    const allowed = { least: 0, most: minutesInAWeek };
    if (value < allowed.least || value > allowed.most) return [{ path, value, code: 'out-of-range', allowed }];
    return this.#valueProblem(path);
  }

  #valueProblem(path: string): Problem[] {
    const cause = this.sheet.explain(this.#column, path);
    return cause ? [{ path, value: null, code: 'no-value', allowed: { cause } }] : [];
  }
}
