import type { ChecksRequest } from '../../plan/checks/wishes.js';
import { answerIds, type AnswerId } from '../../training/checks/screening.js';
import type { ConcreteDesk } from '../concrete/concrete-panel.js';

/*
 * The answers are held by the panel while the page is open, and nowhere else: they are no part of the request, of a plan or
 * of a link. What a page has answered itself counts until a person says otherwise.
 */

const idOf = (answer: AnswerId): string => `answer-${answer}`;

type Held = ConcreteDesk<ChecksRequest>['held'];

/** What holds for the runner. */
export const answersOf = (held: Held, { answers = [] }: ChecksRequest): readonly AnswerId[] =>
  answerIds.filter((id) => (held.has(idOf(id)) ? held.get(idOf(id)) === 'yes' : answers.includes(id)));

/** Takes an answer of a person. */
export function answer(desk: ConcreteDesk<ChecksRequest>, id: AnswerId, isSo: boolean): void {
  desk.hold(idOf(id), isSo ? 'yes' : 'no');
}

/** Nothing of it is known any longer. */
export function forgetAnswers(desk: ConcreteDesk<ChecksRequest>): void {
  const given = desk.request.answers ?? [];
  for (const id of answerIds) desk.hold(idOf(id), given.includes(id) ? 'no' : null);
}
