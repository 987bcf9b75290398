import type { Problem } from '../../problem.js';
import type { Draft } from '../view.js';

/** What is wrong with what was typed into fields and is no value of them. */
export const draftProblems = (drafts: ReadonlyMap<unknown, Draft>): readonly Problem[] =>
  [...drafts.values()].map(({ problem }) => problem);
