import { answersIn } from '../../plan/checks/read-checks.js';
import type { ChecksRequest } from '../../plan/checks/wishes.js';
import { answerIds, type AnswerId } from '../../training/checks/screening.js';
import type { ConcreteDesk } from '../concrete/concrete-panel.js';

/*
 * The answers are held by the panel while the page is open, and nowhere else: they are no part of the request, of a plan or
 * of a link. What a page has answered itself counts until a person says otherwise, whatever else is wrong with what it
 * says.
 */

type Desk = Pick<ConcreteDesk<ChecksRequest>, 'held' | 'given' | 'hold'>;

const idOf = (answer: AnswerId): string => `answer-${answer}`;

/** What holds for the runner. */
export function answersOf({ held, given }: Desk): readonly AnswerId[] {
  const byPage = answersIn(given);
  return answerIds.filter((id) => (held.has(idOf(id)) ? held.get(idOf(id)) === 'yes' : byPage.includes(id)));
}

/** Takes an answer of a person. */
export function answer(desk: Desk, id: AnswerId, isSo: boolean): void {
  desk.hold(idOf(id), isSo ? 'yes' : 'no');
}

/** Nothing of it is known any longer. */
export function forgetAnswers(desk: Desk): void {
  const byPage = answersIn(desk.given);
  for (const id of answerIds) desk.hold(idOf(id), byPage.includes(id) ? 'no' : null);
}
