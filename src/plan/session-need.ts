import { withoutNoise } from '../sheet/numbers.js';
import type { Derivation } from '../sheet/derivation.js';
import type { SheetModel } from '../sheet/model.js';
import type { Method } from '../training/method/document.js';
import type { CategoryId } from '../training/method/ids.js';
import { categoryQuantity } from '../training/method/names.js';
import type { SessionNeed } from '../training/sessions/options.js';

/** What the sessions of a category have to fit, by the derivations of a plan. */
export function sessionNeed(
  { rounding }: Pick<Method, 'rounding'>,
  derivations: Readonly<Record<string, Derivation>>,
  category: CategoryId,
): SessionNeed {
  const derivation = (what: Parameters<typeof categoryQuantity>[1]): Derivation | undefined =>
    derivations[categoryQuantity(category, what)];
  const value = (what: Parameters<typeof categoryQuantity>[1]): number =>
    withoutNoise(derivation(what)?.value ?? Number.NaN);
  // Whole minutes that a person's hand has moved are what the sessions have to fit.
  const isByHand = derivation('rounded')?.byHand != null;
  return {
    exact: value(isByHand ? 'rounded' : 'minutes'),
    rounded: value('rounded'),
    limits: { shortest: value('shortest'), typical: value('typical'), longest: value('longest') },
    rounding,
  };
}

/** What a session need is read from where there are no derivations, in this order. */
export const needFacts = ['minutes', 'rounded', 'shortest', 'typical', 'longest'] as const;

/**
 * What the sessions of a category have to fit, by its numbers in the order of `needFacts`.
 *
 * @param isByHand whether a person's hand has moved whole minutes.
 */
export function needFrom(
  rounding: Method['rounding'],
  [minutes = 0, rounded = 0, shortest = 0, typical = 0, longest = 0]: readonly number[],
  isByHand: boolean,
): SessionNeed {
  return { exact: isByHand ? rounded : minutes, rounded, limits: { shortest, typical, longest }, rounding };
}

/** True where a person's hand has moved whole minutes of a sheet. */
export const isRoundedByHand = ({ overrides }: SheetModel): boolean =>
  overrides.some(({ on }) => on.endsWith('_rounded'));
