import { describe, expect, it } from 'vitest';
import { kindRows } from '../../../src/words/kind-rows.js';
import { loadWords } from '../../../src/words/load-words.js';
import { planned } from './planned.js';

const words = await loadWords('en');

describe('kindRows(words, method, plan)', () => {
  // Four hours in season: common practice, no source.
  it('is the table of the week', () => {
    const { method, plan } = planned({ hours: 4, phase: 'build', sessions: { strength: [25, 25, 25] } });
    const rows = kindRows(words, method, plan).map(({ name, share, exact, planned: rounded }) => [
      name,
      share,
      exact,
      rounded,
    ]);
    expect(rows).toEqual([
      ['Slow running', '30%', '72 min', '70 min'],
      ['Tempo running', '15%', '36 min', '35 min'],
      ['Intervals', '10%', '24 min', '25 min'],
      ['Cross-training', '15%', '36 min', '35 min'],
      ['Strength', '30%', '72 min', '75 min'],
    ]);
    expect(kindRows(words, method, plan).at(-1)?.sessions).toBe('3 × 25');
  });

  it('has no sessions where there are no minutes', () => {
    const { method, plan } = planned({ hours: 4, level: 'new' });
    const intervals = kindRows(words, method, plan).find(({ category }) => category === 'intervals');
    expect(intervals).toMatchObject({ share: '0%', exact: '0 min', planned: '0 min', sessions: '' });
  });
});
