import { describe, expect, test } from 'vitest';
import { answerIds, screen, type AnswerId } from '../../../../src/training/checks/screening.js';
import { adviceIds } from '../../../../src/training/method/check-rules.js';
import { screeningLines } from '../../../../src/words/checks/screening-text.js';
import { documentWith, plannerOf } from '../../training/method/documents.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const everySet = Array.from({ length: 2 ** answerIds.length }, (_, bits) =>
  answerIds.filter((_id, place) => Math.floor(bits / 2 ** place) % 2 === 1),
);

describe('screeningLines(words, method, screening)', () => {
  test.each<[AnswerId[], RegExp, RegExp]>([
    [['symptoms'], /^Do not train now\./, /^Jetzt nicht trainieren\./],
    [['bone-pain'], /^Do not train now\./, /^Jetzt nicht trainieren\./],
    [['known-disease', 'not-active'], /: ask a doctor before you start\.$/, /: vor dem Anfangen ärztlich fragen\.$/],
    [['known-disease'], /: ask a doctor before hard training\. /, /: vor hartem Training ärztlich fragen\. /],
    [['known-disease', 'easy-only'], / ask a doctor before running it as it stands\.$/, / ärztlich fragen\.$/],
    [['not-active'], /: begin with easy to moderate training/, /: mit leichtem bis mäßigem Training beginnen/],
    [['easy-only'], /^Nothing .* stands against starting\. /, /^Nichts .* spricht gegen das Anfangen\. /],
  ])('%j has its advice first, local rules last', (answers, inEnglish, inGerman) => {
    const found = screen(answers);
    const lines = screeningLines(english, method, found);
    expect(lines[0]).toMatch(inEnglish);
    expect(screeningLines(german, method, found)[0]).toMatch(inGerman);
    expect(lines.at(-1)).toBe('Local rules and the judgement of licensed practitioners come first.');
    expect(lines.includes('While this holds, no plan is shown.')).toBe(found.stops);
  });

  test('has a line for each caution, in the order of the questions, stop or no stop', () => {
    for (const answers of [['pain', 'pregnant', 'recent-birth', 'low-energy'], answerIds] as const) {
      const found = screen(answers);
      const lines = screeningLines(english, method, found);
      expect(lines.slice(found.stops ? 2 : 0, -1).map((line) => line.split(/[:,]| harms/)[0])).toEqual([
        ...['Pain in training', 'Pregnant', 'After a birth', 'Too little energy for the training'],
      ]);
    }
  });

  test('never says that nothing stands against starting to somebody who has something to mind', () => {
    for (const answers of everySet) {
      const found = screen(answers);
      const isSaid = screeningLines(english, method, found).some((line) => line.startsWith('Nothing that was said'));
      expect([answers, isSaid]).toEqual([answers, found.advice === 'go' && found.cautions.length === 0]);
    }
  });

  test('leaves no gap and says nothing twice, for every set of answers in both languages', () => {
    for (const answers of everySet)
      for (const [words, keys] of languages) {
        const lines = screeningLines(words, method, screen(answers));
        expect(lines.flatMap((line) => leaksIn(line, keys))).toEqual([]);
        expect(new Set(lines).size).toBe(lines.length);
      }
  });

  test("has a clinic's own wording where its method has one, cautions and local rules unchanged", async () => {
    const own = await plannerOf(
      documentWith('checks.screening.advice', Object.fromEntries(adviceIds.map((id) => [id, `Ours: ${id}`]))),
    );
    for (const answers of everySet) {
      const found = screen(answers);
      const said = screeningLines(german, own.method, found);
      const usual = screeningLines(german, method, found);
      const isAdvised = found.advice !== 'go' || found.cautions.length === 0;
      expect(said).toEqual(isAdvised ? [`Ours: ${found.advice}`, ...usual.slice(1)] : usual);
    }
  });
});
