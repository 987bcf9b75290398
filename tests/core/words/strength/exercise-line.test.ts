import { describe, expect, test } from 'vitest';
import printed from '../../../../shared/checks/strength.json';
import type { Exercise } from '../../../../src/plan/strength/document.js';
import { howHard, nextText, setsText, shareText, weightText } from '../../../../src/words/strength/exercise-line.js';
import { maximumLine } from '../../../../src/words/strength/maximum-line.js';
import { movementName, movementOf } from '../../../../src/words/strength/movement-text.js';
import { strengthGround } from '../../../../src/plan/strength/strength-ground.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn, plain } from '../sheet/languages.js';

const { method } = planner;

const squat: Exercise = {
  ...{ movement: 'goblet-squat', pattern: 'squat', role: 'main', sets: 3, wishedSets: 3 },
  ...{ repetitions: 10, seconds: null, eachSide: false, effort: 6, inHand: 3, rest: 90 },
  ...{ share: 0.683, kilograms: null, next: null },
};
const plank: Exercise = {
  ...squat,
  ...{ movement: 'side-plank', pattern: 'trunk', role: 'support', sets: 2, repetitions: null, seconds: 30 },
  ...{ eachSide: true, effort: 5, inHand: null, share: null },
};

describe('setsText(words, exercise)', () => {
  test('has sets and repetitions, on each side where there are two', () => {
    expect(setsText(english, squat)).toBe('3 × 10');
    expect(setsText(english, { ...squat, eachSide: true })).toBe('3 × 10 on each side');
    expect(setsText(german, { ...squat, eachSide: true })).toBe('3 × 10 auf jeder Seite');
  });

  test('has seconds where it is held', () => {
    expect(setsText(english, plank)).toBe('2 × 30 seconds on each side');
    expect(setsText(german, { ...plank, eachSide: false })).toBe('2 × 30 Sekunden');
    expect(setsText(english, { ...plank, seconds: 1, eachSide: false })).toBe('2 × 1 second');
  });
});

describe('howHard(words, exercise)', () => {
  test('has the effort, and repetitions in hand where they are counted', () => {
    expect(howHard(english, squat)).toBe('effort 6 of 10, 3 repetitions in hand');
    expect(howHard(english, { ...squat, inHand: 1 })).toBe('effort 6 of 10, 1 repetition in hand');
    expect(howHard(english, plank)).toBe('effort 5 of 10');
    expect(howHard(german, squat)).toBe('Anstrengung 6 von 10, 3 Wiederholungen blieben übrig');
    expect(howHard(german, { ...squat, inHand: 1 })).toBe('Anstrengung 6 von 10, 1 Wiederholung bliebe übrig');
  });
});

describe('how heavy', () => {
  const weighed: Exercise = { ...squat, kilograms: 22.5, next: { least: 25, most: 27.5 } };

  test('is the share in whole per cent', () => {
    expect(shareText(english, squat)).toBe('About 68% of the heaviest single.');
    expect(plain(shareText(german, squat))).toBe('Etwa 68 % des einmal möglichen Gewichts.');
    expect(shareText(english, plank)).toBe('');
  });

  test('is the weight and what to go on with where a set has told it', () => {
    expect(weightText(english, weighed)).toBe('22.5 kg');
    expect(weightText(german, weighed)).toBe('22,5 kg');
    expect(nextText(english, weighed)).toBe(
      'One or two repetitions more than asked for, twice in a row: go on with 25 to 27.5 kg.',
    );
    expect(nextText(german, weighed)).toBe(
      'Zweimal nacheinander ein, zwei Wiederholungen mehr als verlangt: weiter mit 25 bis 27,5 kg.',
    );
  });

  test('is empty while nothing has told it', () => {
    expect([weightText(english, squat), nextText(english, squat)]).toEqual(['', '']);
  });
});

describe('maximumLine(words, maximum)', () => {
  // Epley 1985 and Brzycki 1993: shared/checks/strength.json, to a tenth by the test.
  test.each(printed.maximum.cases.map(({ out }) => out))('%j has the lower first', ({ epley, brzycki }) => {
    const maximum = { movement: 'goblet-squat', epley, brzycki, used: Math.min(epley, brzycki) };
    const [from = '', to = ''] = [epley, brzycki]
      .sort((one, other) => one - other)
      .map((each) => String(Math.round(each * 10) / 10));
    expect(maximumLine(english, maximum)).toBe(
      `Heaviest single about ${from} to ${to} kg, by two equations; the lower is used.`,
    );
    expect(maximumLine(german, maximum)).toBe(
      `Einmal möglich etwa ${from.replace('.', ',')} bis ${to.replace('.', ',')} kg, nach zwei Gleichungen; die niedrigere zählt.`,
    );
  });

  test('has one number where both come to the same', () => {
    const maximum = { movement: 'goblet-squat', epley: 40, brzycki: 40, used: 40 };
    expect(maximumLine(english, maximum)).toBe('Heaviest single 40 kg.');
    expect(maximumLine(german, { ...maximum, epley: 40.01 })).toBe('Einmal möglich 40 kg.');
  });
});

describe('movements', () => {
  test('have a name, how they are done and what to mind in both languages, without a gap', () => {
    for (const { id, how, cautions = [] } of strengthGround(method).movements)
      for (const [words, keys] of languages) {
        const told = [movementName(words, method, id), words.text(how), ...cautions.map((text) => words.text(text))];
        expect([id, ...told.flatMap((text) => leaksIn(text, keys))]).toEqual([id]);
      }
  });

  test('are found by their ids, and nothing else is', () => {
    expect(movementName(english, method, 'goblet-squat')).toBe('Goblet squat');
    expect(movementName(german, method, 'plank')).toBe('Unterarmstütz');
    expect(() => movementOf(method, 'lunge')).toThrow('there is no movement lunge');
  });
});
