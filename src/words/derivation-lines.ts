import type { Plan, PlanDerivation } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { cellErrorReason } from './cell-error-reason.js';
import { derivationOrigin } from './derivation-origin.js';
import { derivationTitle } from './derivation-title.js';
import { formulaWords } from './formula-words.js';
import { quantityName } from './quantity-names.js';
import { quantityValue } from './quantity-value.js';
import { byHandLine } from './by-hand-line.js';
import { ruleStepLine, type RuleStepLine } from './rule-step-line.js';
import type { Words } from './words.js';

/** A quantity that a formula reads. */
export interface ReadingLine {
  readonly quantity: string;
  readonly name: string;
  readonly value: string;
  /** How well it is founded; null where it is set by hand or follows from others. */
  readonly status: string | null;
  readonly reason: string | null;
}

/** Why a quantity is what it is, line by line; what does not apply is null or empty. */
export interface DerivationLines {
  readonly title: string;
  /** For what is no formula: set by hand, a number of the method, rounded together. */
  readonly origin: string | null;
  readonly formula: string | null;
  readonly readings: readonly ReadingLine[];
  readonly rules: readonly RuleStepLine[];
  /** What a person put over it, or how it gives way to that. */
  readonly byHand: string | null;
  readonly status: string | null;
  readonly reason: string | null;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
  readonly failure: string | null;
}

/** The derivations of a plan and the method that made it. */
export interface PlannedBy {
  readonly method: Method;
  readonly plan: Pick<Plan, 'derivations'>;
}

/**
 * The derivation of a quantity in words, or null where the plan has no such quantity.
 *
 * @example derivationLines(words, { method, plan }, 'strength_minutes')?.title // 'Why 72 minutes of strength?'
 */
export function derivationLines(words: Words, planned: PlannedBy, quantity: string): DerivationLines | null {
  const derivation = derivationOf(planned.plan, quantity);
  if (!derivation) return null;
  const { method } = planned;
  const { kind, formula, readings, rules, byHand, reason, sources, error } = derivation;
  return {
    title: derivationTitle(words, method, derivation),
    origin: derivationOrigin(words, method, derivation),
    formula: kind === 'formula' && formula !== null ? formulaWords(words, { method }, formula) : null,
    readings: [...readings, ...(byHand?.kind === 'override' ? byHand.readings : [])].map(({ name, value }) =>
      readingLine(words, planned, { id: name, value }),
    ),
    rules: rules.map((step) => ruleStepLine(words, method, { step, quantity })),
    byHand: byHand && byHandLine(words, method, { ...derivation, byHand }),
    status: statusText(words, derivation),
    reason: reason && words.text(reason),
    sources,
    failure: error && words.capital(`${cellErrorReason(words, error, (id) => quantityName(words, method, id))}.`),
  };
}

function derivationOf({ derivations }: Pick<Plan, 'derivations'>, quantity: string): PlanDerivation | undefined {
  return Object.hasOwn(derivations, quantity) ? derivations[quantity] : undefined;
}

function readingLine(
  words: Words,
  { method, plan }: PlannedBy,
  reading: { id: string; value: number | null },
): ReadingLine {
  const { status = null, reason = null } = derivationOf(plan, reading.id) ?? {};
  return {
    quantity: reading.id,
    name: quantityName(words, method, reading.id),
    value: quantityValue(words, method, reading),
    status: status && words.say(`status.${status}`),
    reason: reason && words.text(reason),
  };
}

function statusText(words: Words, { status, kind }: PlanDerivation): string | null {
  if (status) return words.say(`status.${status}`);
  return kind === 'formula' || kind === 'block' ? words.say('status.arithmetic') : null;
}
