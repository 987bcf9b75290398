import { describe, expect, it } from 'vitest';
import { linesOf, ran } from './fake-io.js';
import { paragraph } from './pages.js';
import { also, documentOf, plannedSeason } from './season-line.js';

const usual = also();

describe('weekwright season', () => {
  // Worked out by hand in tests/reference/season/worked-season.test.ts.
  it('says first what the season comes to, then has a table of its weeks', async () => {
    const { code, output, errors } = await ran(usual);
    expect([code, errors]).toEqual([0, '']);
    expect(linesOf(output)[0]).toBe(
      'Half marathon on Sunday, April 11, 2027: 16 weeks, from 4 hours a week to 6 hours in week 11, the last 2 weeks a taper.',
    );
    const [head, ...rows] = paragraph(output, /^Week +From/);
    expect(head?.split(/ {2,}/)).toEqual([
      ...['Week', 'From', 'Phase', 'Hours', 'Slow running', 'Tempo running', 'Intervals', 'Cross-training', 'Strength'],
      ...['Load', 'Longest run'],
    ]);
    expect(rows).toHaveLength(18);
    expect(rows[0]).toMatch(/^ +1 {2}Dec 21 {2}base +4 h +70 +35 +25 +35 +75 /);
    expect(rows[3]).toMatch(/^ +4 {2}Jan 11 {2}base \(easier\) +3 h 10 min +55 +50 +0 +30 +55 /);
    expect(rows[15]).toMatch(/^ +16 +Apr 5 {2}taper \(half marathon\) +2 h 20 min +80 +20 +20 +0 +20 /);
  });

  it('says why each week has its hours, what to mind, and what the numbers rest on with their sources', async () => {
    const { output } = await ran(usual);
    const [, ...why] = paragraph(output, /^Why the hours are so/);
    expect(why).toHaveLength(18);
    expect(why[3]).toBe(
      '- Week 4, 3 h 10 min: An easier week: 70% of 4 hours 30 minutes, the highest of the four weeks before.',
    );
    expect(paragraph(output, /^Worth knowing/).join('\n')).toMatch(/^- Week \d+: .*What would help: /m);
    expect(paragraph(output, /^Pooled trials/)[0]).toMatch(/\(published\)$/);
    expect(paragraph(output, /^Pooled trials/)[1]).toMatch(/^ {2}\S.*doi:10\./);
    expect(output).not.toMatch(/\{\w+\}|season[-.]\w|hours-reason|undefined|NaN/);
  });

  it('has what concerns the season as a whole before its weeks, with what would help', async () => {
    // By hand in tests/core/plan/season/notices.test.ts.
    const { output } = await ran('season --most-hours 6 --date 2027-04-11 --weeks 8'.split(' '));
    expect(output.split('\n\n')[1]).toBe(
      '- 6 hours a week is not reached: rising by 10% at most, the season comes to 5 hours 10 minutes. What would help: at most 5 hours 10 minutes a week or rise by up to 15% a week.',
    );
  });

  it('marks a caution', async () => {
    const { output } = await ran(also('--rise', '25'));
    expect(output.split('\n\n')[1]).toMatch(/^- Caution: Rising by 25% a week is worth a look/m);
  });

  it('speaks German', async () => {
    const { code, output } = await ran(also('--lang', 'de'));
    expect(code).toBe(0);
    expect(linesOf(output)[0]).toBe(
      'Halbmarathon am Sonntag, 11. April 2027: 16 Wochen, von 4 Stunden pro Woche auf 6 Stunden in Woche 11, die letzten 2 Wochen als Tapering.',
    );
    expect(paragraph(output, /^Woche +Ab/)[1]).toMatch(/^ +1 {2}21\. Dez\. {2}Grundlagenphase +4 h /);
    expect(output).not.toMatch(/\{\w+\}|season[-.]\w|hours-reason|\u00AD/);
  });
});

describe('weekwright season --json', () => {
  it('is a document of its own kind: what was asked, and a list of weeks', async () => {
    const season = await documentOf(usual);
    expect(season).toMatchObject({
      format: 'weekwright-season',
      version: 1,
      method: { id: 'weekwright' },
      inputs: { hours: 4, level: 'developing', event: 'half-marathon', strengthCap: 120 },
      wishes: { start: '2026-12-21', date: '2027-04-11', hours: 4, mostHours: 6 },
      notices: [],
    });
    // A phase is none of its inputs: each week has its own.
    expect(Object.keys(season.inputs)).toEqual(['hours', 'level', 'event', 'strengthCap']);
    expect(Array.isArray(season.weeks)).toBe(true);
    expect(season.weeks).toHaveLength(18);
  });

  it('has of every week its Monday, its phase, its hours, and its minutes exact and planned', async () => {
    const { weeks } = await documentOf(usual);
    expect(weeks[0]).toMatchObject({
      ...{ number: 1, start: '2026-12-21', week: '2026-W52', phase: 'base', hours: 4 },
      // 30, 15, 10, 15 and 30 per cent of 240 minutes: common practice, no source.
      minutes: { slow: 72, tempo: 36, intervals: 24, cross: 36, strength: 72 },
      rounded: { slow: 70, tempo: 35, intervals: 25, cross: 35, strength: 75 },
      notices: [],
    });
    expect(weeks[1]?.notices.map(({ code, level }) => [code, level])).toEqual([['longer-run', 'note']]);
    for (const { hours, rounded } of weeks)
      expect(Object.values(rounded).reduce((sum, minutes) => sum + minutes)).toBeCloseTo(60 * hours, 9);
  });

  it('is the season of the planner', async () => {
    const season = await documentOf(usual);
    const wishes = { date: '2027-04-11', weeks: 16, mostHours: 6 };
    expect(season).toMatchObject(JSON.parse(JSON.stringify(plannedSeason(wishes))) as object);
  });

  it('does not depend on the language', async () => {
    expect(await ran(also('--json', '--lang', 'de'))).toEqual(await ran(also('--json')));
  });
});

describe('weekwright season --help', () => {
  it('lists every option of a season with what is allowed, and none of a plan alone', async () => {
    const { code, output } = await ran(['season', '--help']);
    expect(code).toBe(0);
    for (const [synopsis, says] of [
      ['--hours HOURS', 'hours a week, 0\\.5 to 20; 4 where left out'],
      ['--date DATE', 'the day of the event'],
      ['--rise PERCENT', 'most that a week may have above'],
      ['--upkeep-from PHASE', '.*never, taper, peak'],
      ['--phases PHASE\\[:WEEKS\\],…', '.*off-season, base, build, peak, recovery'],
      ['--events DATE:EVENT,…', '.*5k, 10k, half-marathon, marathon, longer'],
      ['--by-hand DATE:HOURS\\[:REASON\\],…', '.*holiday, ill, other'],
      ['--longest-run MINUTES', 'minutes of the longest run'],
    ] as const)
      expect(output).toMatch(new RegExp(`^ {2}${synopsis} +${says}`, 'm'));
    expect(output).not.toMatch(/--(?:days|phase|roster)\b(?!s)/);
    expect(output).toContain('Two of date, start and weeks are enough');
    expect(output).not.toMatch(/option\.|[{}]/);
  });

  it('is there in German', async () => {
    const { output } = await ran(['season', '--help', '--lang', 'de']);
    expect(output).toMatch(/^ {2}--date DATE +der Tag des Wettkampfs$/m);
    expect(output).toMatch(/^ {2}--taper-drop PERCENT +was alle Wochen des Taperings zusammen verlieren$/m);
    expect(output).not.toMatch(/option\.|[{}]/);
  });

  it('of a plan has no option of a season', async () => {
    const { output } = await ran(['plan', '--help']);
    expect(output).not.toMatch(/--(?:date|weeks|rise|taper-weeks|phases|by-hand)\b/);
  });

  it('is named where no command is given', async () => {
    const { output } = await ran(['--help']);
    expect(output).toMatch(/^ {2}weekwright season --date DATE/m);
    expect(output).toContain('weekwright season --help');
  });
});
