import { describe, expect, test } from 'vitest';
import en from '../../../shared/locales/en.json';
import { cautionIds } from '../../../src/training/method/check-rules.js';
import { usualCautions } from '../../../src/words/usual-cautions.js';
import { documentWith, plannerOf, problemsOf } from '../training/method/documents.js';
import { english } from './sheet/languages.js';

const texts: Readonly<Record<string, unknown>> = en;

describe('usualCautions(words, method)', () => {
  test('are those of the locales, each once', () => {
    expect(usualCautions(english, {})).toEqual(cautionIds.map((id) => texts[`usual-caution.${id}`]));
  });

  test('are in a clinic’s own wording where its method has one, the others as they are', async () => {
    const { method } = await plannerOf(documentWith('checks.cautions', { heat: 'Ask our desk in July.' }));
    const said = usualCautions(english, method);
    expect(said[cautionIds.indexOf('heat')]).toBe('Ask our desk in July.');
    expect(said.filter((text) => text !== 'Ask our desk in July.')).toHaveLength(cautionIds.length - 1);
  });

  test.each([
    ['blank', ''],
    ['of spaces', '   '],
    ['of what nobody sees', '\u200b\u2060\u200b'],
    ['of dashes', '– –'],
    ['another text of ours', { key: 'advice.go' }],
  ])('cannot be left unsaid: %s', async (_, heat) => {
    const problems = await problemsOf(documentWith('checks.cautions', { heat }));
    expect(problems.map(({ path }) => path)).toEqual(
      expect.arrayContaining([expect.stringMatching(/^checks.cautions.heat/)]),
    );
  });
});
