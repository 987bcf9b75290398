import type { FactId } from '../../training/checks/facts.js';

/*
 * Names that no formula can have: they are there only where checks are, so no quantity of a coach may depend on them or
 * clash with them.
 */

/** The quantity that holds a fact, `fact:rest_days`; −1 where it is not known. */
export const factQuantity = (id: FactId | 'hard_minutes_share' | 'hard_sessions_share'): string => `fact:${id}`;

/** The quantity that holds the level of a check: 0 in line, 1 worth a look, 2 caution, −1 not known. */
export const checkQuantity = (id: string): string => `check:${id}`;

/** What a number is that is not known. */
export const notKnown = -1;

/** True for the level of a check. */
export const isCheck = (id: string): boolean => id.startsWith('check:');

/** True for the quantities that checks bring to a sheet. */
export const isOfChecks = (id: string): boolean => /^(?:fact|check):/.test(id);
