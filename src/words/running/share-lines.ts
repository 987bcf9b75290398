import { runningRules } from '../../plan/running/running-ground.js';
import type { Method } from '../../training/method/document.js';
import { categoryTitle } from '../category-name.js';
import type { Words } from '../words.js';

/** What share of the greatest oxygen uptake each kind of running takes, which gives its pace. */
export const shareLines = (words: Words, method: Method): readonly string[] =>
  runningRules(method).kinds.map(({ id, uptake }) =>
    words.say('running.share', {
      kind: categoryTitle(words, method, id),
      least: words.share(uptake.least),
      most: words.share(uptake.most),
    }),
  );
