import { Column } from '../../sheet/column.js';
import type { Derivation } from '../../sheet/derivation.js';
import { Deriver } from '../../sheet/derive.js';
import { withoutNoise } from '../../sheet/numbers.js';
import type { Sheet } from '../../sheet/sheet.js';
import type { Method } from '../../training/method/document.js';
import { byCategory, categoryIds, type ByCategory, type CategoryId } from '../../training/method/ids.js';
import { categoryQuantity, strengthUpkeep } from '../../training/method/names.js';
import { effortsOf } from '../../training/load/efforts-of.js';
import { weekLoad } from '../../training/load/week-load.js';
import { bestSessions, isSessionOption, sessionOptions, type SessionNeed } from '../../training/sessions/options.js';
import type { Notice, PlanInputs } from '../document.js';
import { inputValues } from '../inputs.js';
import { noticesOf } from '../notices.js';
import { ruleOutcomes } from '../rule-outcomes.js';
import { isRoundedByHand, needFacts, needFrom } from '../session-need.js';

/** The categories that are running. */
export const runIds = ['slow', 'tempo', 'intervals'] as const satisfies readonly CategoryId[];

/** What is asked of a week. */
export interface FiguresAsked {
  readonly inputs: PlanInputs;
  /** The most minutes of strength; 0 for no limit. */
  readonly upkeep: number;
  /** Durations picked by a person, in minutes. */
  readonly picks: Partial<ByCategory<readonly number[]>>;
  /** Minutes that no run should pass where its kind can be cut otherwise. */
  readonly runLimit: number;
}

/** What a season knows of a week. */
export interface WeekFigures {
  readonly minutes: ByCategory<number>;
  readonly rounded: ByCategory<number>;
  readonly sessions: ByCategory<readonly number[]>;
  readonly load: number;
  readonly longestRun: number;
  /** Kinds of running that are cut into shorter runs than usual. */
  readonly shortened: readonly CategoryId[];
  /** What the method says of it. */
  readonly notices: readonly Notice[];
  /** False where the method gives it no minutes. */
  readonly isWhole: boolean;
}

const nothing = byCategory(() => 0);
const noSessions = byCategory((): readonly number[] => []);

/** A week without training. */
export const weekOff: WeekFigures = {
  minutes: nothing,
  rounded: nothing,
  sessions: noSessions,
  load: 0,
  longestRun: 0,
  shortened: [],
  notices: [],
  isWhole: true,
};

/** Works out weeks of one sheet, one after the other: what stays from week to week is not computed again. */
export class FiguresSource {
  readonly #method: Method;
  readonly #column: Column;
  readonly #deriver: Deriver;
  /** The registers of what sessions have to fit, by category. */
  readonly #needs: ByCategory<readonly number[]>;
  readonly #isByHand: boolean;
  readonly #effort: ByCategory<number>;
  /** The quantities that rules act on. */
  readonly #ruled: readonly string[];

  constructor(method: Method, sheet: Sheet) {
    this.#method = method;
    this.#column = new Column(sheet.program);
    this.#deriver = new Deriver(sheet, this.#column);
    this.#needs = byCategory((id) => needFacts.map((fact) => this.#column.registerOf(categoryQuantity(id, fact))));
    this.#isByHand = isRoundedByHand(sheet.model);
    this.#effort = effortsOf(method);
    this.#ruled = [...new Set(method.rules.flatMap((rule) => (rule.kind === 'change' ? [rule.on] : [])))];
  }

  /** What sessions of a category have to fit, in the week worked out last. */
  need(id: CategoryId): SessionNeed {
    const numbers = this.#needs[id].map((register) => withoutNoise(this.#column.registers[register] ?? NaN));
    return needFrom(this.#method.rounding, numbers, this.#isByHand);
  }

  /** The figures of a week. */
  of({ inputs, upkeep, picks, runLimit }: FiguresAsked): WeekFigures {
    this.#column.set({ ...inputValues(inputs), [strengthUpkeep]: upkeep });
    const needs = byCategory((id) => this.need(id));
    const minutes = byCategory((id) => withoutNoise(this.#column.value(categoryQuantity(id, 'minutes'))));
    if (categoryIds.some((id) => !(minutes[id] >= 0) || !(needs[id].rounded >= 0)))
      return { ...weekOff, isWhole: false };
    const rounded = byCategory((id) => needs[id].rounded);
    const usual = byCategory((id) => pickOf(picks[id], needs[id]) ?? bestSessions(needs[id]));
    const tooLong = runIds.filter((id) => !picks[id] && usual[id].some((run) => run > runLimit));
    const shorter = new Map<CategoryId, readonly number[] | null>(
      tooLong.map((id) => [id, sessionsWithin(needs[id], runLimit)]),
    );
    const sessions = byCategory((id) => shorter.get(id) ?? usual[id]);
    const dropped = categoryIds.filter((id) => picks[id] && !pickOf(picks[id], needs[id]));
    return {
      minutes,
      rounded,
      sessions,
      load: weekLoad(rounded, this.#effort),
      longestRun: Math.max(0, ...runIds.flatMap((id) => sessions[id])),
      shortened: tooLong.filter((id) => shorter.get(id) != null),
      notices: this.#notices({ minutes, rounded, dropped }),
      isWhole: true,
    };
  }

  #notices({ minutes, rounded, dropped }: NoticeGround): Notice[] {
    const derivations: Record<string, Derivation> = {};
    for (const id of this.#ruled) derivations[id] = this.#deriver.derive(id);
    return noticesOf({
      method: this.#method,
      rules: ruleOutcomes(this.#method, this.#column, derivations),
      total: { exact: withoutNoise(sum(minutes)), rounded: sum(rounded) },
      droppedPicks: dropped,
      rounded,
      derivations,
      byHand: [],
    });
  }
}

interface NoticeGround {
  readonly minutes: ByCategory<number>;
  readonly rounded: ByCategory<number>;
  readonly dropped: readonly CategoryId[];
}

function pickOf(picked: readonly number[] | undefined, need: SessionNeed): readonly number[] | null {
  return picked && isSessionOption(picked, need) ? [...picked].sort((one, other) => one - other) : null;
}

/** The best way to cut a category's minutes into runs that are not too long, as many as usual if that can be; else null. */
export function sessionsWithin(need: SessionNeed, limit: number): readonly number[] | null {
  const options = sessionOptions(need);
  const usual = options[0]?.length;
  const within = options.filter((option) => option.every((minutes) => minutes <= limit));
  return within.find(({ length }) => length === usual) ?? within[0] ?? null;
}

const sum = (values: ByCategory<number>): number => categoryIds.reduce((total, id) => total + values[id], 0);
