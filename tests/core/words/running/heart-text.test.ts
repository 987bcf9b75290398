import { describe, expect, test } from 'vitest';
import { bandIds } from '../../../../src/training/method/running-rules.js';
import { guideHeart, heartLines, heartSpanText } from '../../../../src/words/running/heart-text.js';
import { runningOf } from '../../../reference/running/running-door.js';
import { planner } from '../planned.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;

describe('heartLines(words, method, running)', () => {
  test('has both estimates and by how much they are off', () => {
    // Tanaka 2001 and Gellish 2007 at 20: shared/checks/running.json.
    expect(heartLines(english, method, runningOf({ age: 20 }))).toEqual([
      'Highest heart rate about 194, estimated from the age (Tanaka 2001 194 and Gellish 2007 193). For about one person in three such an estimate is off by more than 7 to 12 beats: a measured one is better.',
      'Ranges by the highest heart rate alone; with the resting one they fit better.',
      'In short bouts the heart lags behind: go by pace and effort there.',
    ]);
  });

  test('says where it is measured, and where ranges go by the reserve', () => {
    const running = runningOf({ highestHeart: 187, restingHeart: 48, age: 30 });
    expect(heartLines(english, method, running).slice(0, 2)).toEqual([
      'Highest heart rate 187, as measured.',
      'Ranges by the reserve between resting and highest heart rate.',
    ]);
    expect(heartLines(german, method, running)).toEqual([
      'Höchster Puls 187, wie gemessen.',
      'Bereiche nach der Reserve zwischen Ruhepuls und höchstem Puls.',
      'In kurzen Abschnitten hinkt der Puls nach: Dort zählen Tempo und Anstrengung.',
    ]);
  });

  test('is empty where none is known', () => {
    expect(heartLines(english, method, runningOf({ restingHeart: 50 }))).toEqual([]);
  });

  test('leaves no gap in either language', () => {
    for (const told of [{ age: 33 }, { highestHeart: 190 }, { age: 33, highestHeart: 190, restingHeart: 50 }])
      for (const [words, keys] of languages)
        for (const line of heartLines(words, method, runningOf(told))) expect(leaksIn(line, keys)).toEqual([]);
  });
});

describe('what goes with it', () => {
  test('beats are whole, with a dash between', () => {
    expect(heartSpanText(english, { from: 124, to: 144 })).toBe('124–144');
  });

  test('the bands that they are in are named, one band once', () => {
    const heart = { from: 124, to: 144 };
    expect(guideHeart(english, heart, { from: 'moderate', to: 'vigorous' })).toBe(
      '124–144 a minute, moderate to vigorous',
    );
    expect(guideHeart(english, heart, { from: 'vigorous', to: 'vigorous' })).toBe('124–144 a minute, vigorous');
    expect(guideHeart(german, heart, { from: 'light', to: 'moderate' })).toBe('124–144 je Minute, leicht bis mittel');
  });

  test('every band has a name', () => {
    for (const [words, keys] of languages)
      for (const id of bandIds) expect(leaksIn(words.say(`running.band.${id}`), keys)).toEqual([]);
  });
});
