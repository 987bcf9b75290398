import { describe, expect, test } from 'vitest';
import { planWeek, type PlanRequest } from '../../../../src/plan.js';
import { concretePlan, toldIn, type ConcretePlan } from '../../../../src/plan/handout/concrete-plan.js';
import { weekPlanner } from '../../../../src/plan/record/planned-week.js';
import { builtInMethod as method } from '../../../../src/training/method/built-in.js';
import { kindLines } from '../../../../src/words/handout/kind-lines.js';
import { sessionTexts } from '../../../../src/words/handout/session-text.js';
import { strengthBlocks, strengthLines } from '../../../../src/words/handout/strength-blocks.js';
import { weekText, type WeekText } from '../../../../src/words/handout/week-text.js';
import type { Words } from '../../../../src/words/words.js';
import { valueOf } from '../../training/method/documents.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const request: PlanRequest = { hours: 4, phase: 'base', level: 'developing' };
const onDays: PlanRequest = { ...request, week: { days: [60, 0, 45, 60, 0, 90, 120] } };

function concrete(asked: PlanRequest): ConcretePlan {
  const plan = valueOf(planWeek(asked));
  return concretePlan(method, plan, toldIn(plan));
}

function textOf(words: Words, asked: PlanRequest, start = '2026-11-30'): WeekText {
  const plan = valueOf(planWeek(asked));
  return weekText(words, method, { week: weekPlanner(method, plan)(start), told: toldIn(plan) });
}

/** The same with a pace for slow running, in seconds a kilometre. */
function paced(plan: ConcretePlan, from: number, to: number): ConcretePlan {
  const guides = plan.running.guides.map((each) => (each.category === 'slow' ? { ...each, pace: { from, to } } : each));
  return { ...plan, running: { ...plan.running, guides } };
}

// The efforts are those of shared/methods/default.json: `running.kinds` for runs, else those of the categories.
describe('kindLines(words, method, plan)', () => {
  test('has how hard each kind is, and for runs how that feels', () => {
    expect(kindLines(english, method, concrete(request))).toEqual([
      { name: 'Slow running', how: '2 to 4 of 10, so that whole sentences can be spoken' },
      { name: 'Tempo running', how: '5 to 6 of 10, so that a few words at a time can be spoken' },
      { name: 'Intervals', how: '7 to 9 of 10, so that single words are all that can be spoken' },
      { name: 'Cross-training', how: expect.stringMatching(/^\d of 10$/) as string },
      { name: 'Strength', how: expect.stringMatching(/^\d of 10$/) as string },
    ]);
  });

  test('has them in German', () => {
    expect(kindLines(german, method, concrete(request)).slice(0, 2)).toEqual([
      { name: 'Langsames Laufen', how: '2 bis 4 von 10, so, dass ganze Sätze möglich sind' },
      { name: 'Tempolauf', how: '5 bis 6 von 10, so, dass einige Wörter am Stück möglich sind' },
    ]);
  });

  test('has the pace where one is known, one number where both ends are the same', () => {
    const plan = concrete(request);
    expect(kindLines(english, method, paced(plan, 320, 375))[0]?.how).toBe(
      '2 to 4 of 10, so that whole sentences can be spoken; 5:20 to 6:15 a kilometre',
    );
    expect(kindLines(english, method, paced(plan, 360, 360))[0]?.how).toMatch(/; 6:00 a kilometre$/);
  });
});

describe('sessionTexts(words, method, plan)', () => {
  test('has every session in the order of the days, with day, length and how hard', () => {
    const texts = sessionTexts(english, method, concrete(onDays));
    expect(texts.map(({ title, day, length, minutes }) => [title, day, length, minutes])).toEqual([
      ['Tempo running', 0, '35 min', 35],
      ['Intervals', 2, '25 min', 25],
      ['Slow running', 2, '20 min', 20],
      ['Cross-training', 3, '35 min', 35],
      ['Strength', 3, '25 min', 25],
      ['Strength', 5, '50 min', 50],
      ['Slow running', 6, '50 min', 50],
    ]);
    expect(texts[2]).toMatchObject({ effort: '2 to 4 of 10', sets: [] });
  });

  test('says how cross-training goes, and has the sets of strength below', () => {
    const texts = sessionTexts(english, method, concrete(onDays));
    expect(texts[3]?.how).toBe('Cycling, swimming or whatever spares the legs.');
    expect(texts[4]?.how).toBe('Sets below.');
    expect(texts[4]?.sets[0]).toMatch(/^Warm-up \d+(?:\.5)? minutes$/);
    // Each has its own: legs are spared on the day before a long run.
    for (const [place, day] of [
      [4, 3],
      [5, 5],
    ] as const) {
      const own = concrete(onDays).strength.sessions.filter((each) => each.day === day);
      expect([texts[place]?.sets]).toEqual(
        own.map((each) => strengthLines(english, strengthBlocks(english, method, each))),
      );
    }
    expect(sessionTexts(german, method, concrete(onDays))[3]?.how).toBe('Rad, Schwimmen oder was die Beine schont.');
  });

  test('has how far a run is where a pace is known', () => {
    const plan = concrete(onDays);
    const sessions = plan.running.sessions.map((each) =>
      each.category === 'slow' ? { ...each, metres: { from: 5600, to: 6600 } } : each,
    );
    const texts = sessionTexts(english, method, { ...plan, running: { ...plan.running, sessions } });
    expect(texts[2]?.how).toMatch(/\. About 5\.6 to 6\.6 km\.$/);
    expect(texts[0]?.how).not.toContain('About');
  });

  test('leaves no gap in either language, on days or on any', () => {
    for (const asked of [request, onDays, { ...request, hours: 1 }, { ...request, hours: 12 }])
      for (const [words, keys] of languages)
        for (const text of sessionTexts(words, method, concrete(asked)))
          for (const each of [text.title, text.length, text.effort, text.how, ...text.sets])
            expect([each, leaksIn(each, keys)]).toEqual([each, []]);
  });
});

describe('weekText(words, method, week)', () => {
  test('has the week in a sentence, seven days and their dates', () => {
    const { when, inSeason, lead, days } = textOf(english, onDays);
    // Intl writes a range with thin spaces.
    expect([when.replaceAll('\u2009', ' '), inSeason, lead]).toEqual([
      ...['Nov 30 – Dec 6, 2026', 'Base', '7 sessions on 5 days, 4 hours in all.'],
    ]);
    expect(days?.map(({ name, date, sessions }) => [name, date, sessions.length])).toEqual([
      ...[['Monday', 'Nov 30', 1] as const, ['Tuesday', 'Dec 1', 0] as const, ['Wednesday', 'Dec 2', 2] as const],
      ...[['Thursday', 'Dec 3', 2] as const, ['Friday', 'Dec 4', 0] as const, ['Saturday', 'Dec 5', 1] as const],
      ['Sunday', 'Dec 6', 1],
    ]);
  });

  test('has them in German', () => {
    const { lead, days } = textOf(german, onDays);
    expect(lead).toBe('7 Einheiten an 5 Tagen, zusammen 4 Stunden.');
    expect([days?.[0]?.name, days?.[0]?.date]).toEqual(['Montag', '30. Nov.']);
  });

  test('has no days where its sessions are for any day', () => {
    const { lead, days, sessions, strength } = textOf(english, request);
    expect([lead, days, sessions.length]).toEqual(['7 sessions, 4 hours in all.', null, 7]);
    expect(strength.map(({ title, length }) => `${title}, ${length}`)).toEqual([
      ...['Session 1, 35 min', 'Session 2, 40 min'],
    ]);
  });

  test('has a title for each strength session, with its day', () => {
    expect(textOf(english, onDays).strength.map(({ title }) => title)).toEqual([
      ...['Session 1, Thursday', 'Session 2, Saturday'],
    ]);
    expect(textOf(german, onDays).strength.map(({ title }) => title)).toEqual([
      ...['Einheit 1, Donnerstag', 'Einheit 2, Samstag'],
    ]);
  });

  test('names the week of the season, and that it is easier', () => {
    // 11 April 2027 is a Sunday, the week of 21 December the first of sixteen.
    const asked: PlanRequest = { ...request, event: 'half-marathon', season: { date: '2027-04-11', weeks: 16 } };
    expect(textOf(english, asked, '2026-12-21').inSeason).toBe('Week 1, base');
    expect(textOf(german, asked, '2027-04-05').inSeason).toBe('Woche 16, Tapering (Halbmarathon)');
    const easier = valueOf(planWeek(asked)).season?.weeks.find(({ isEasier }) => isEasier);
    expect(textOf(english, asked, easier?.start).inSeason).toMatch(/^Week \d+, \w+ \(easier\)$/);
  });
});
