import { describe, expect, it } from 'vitest';
import { pageOf } from './pages.js';

/** Lines with the ends that RFC 5545, 3.1, asks for. */
const file = (lines: readonly string[]): string => lines.map((line) => `${line}\r\n`).join('');

// One hour in recovery: 40, 35 and 25 per cent (common practice, no source) are 24, 21 and 15 minutes, planned as 25, 20
// and 15. The identifier ends with the FNV-1a hash of the name, and the revision is the seconds since 2020: both by Python.
const oneHour = 'calendar --hours 1 --phase recovery --week-of 2027-01-13';
const world = { now: '20270110T093000Z' };

describe('weekwright calendar, byte by byte', () => {
  it('writes a week whose sessions are for any day as one event', async () => {
    const argv = [...oneHour.split(' '), '--name', ' Spring, 2027', '--contact', 'Questions: desk 4; mornings '];
    expect(await pageOf(argv, world)).toBe(
      file([
        'BEGIN:VCALENDAR',
        'VERSION:2.0',
        'PRODID:-//Weekwright//NONSGML Training calendar//EN',
        'NAME;LANGUAGE=en:Spring\\, 2027',
        'X-WR-CALNAME:Spring\\, 2027',
        'BEGIN:VEVENT',
        'UID:2027-01-11-week-rg7ul1@weekwright',
        'DTSTAMP:20270110T093000Z',
        'LAST-MODIFIED:20270110T093000Z',
        'SEQUENCE:221736600',
        'DTSTART;VALUE=DATE:20270111',
        'DTEND;VALUE=DATE:20270118',
        'SUMMARY;LANGUAGE=en:Training week\\, 1 h',
        'DESCRIPTION;LANGUAGE=en:3 sessions\\, 1 hour in all.\\nSlow running: 25 min\\n',
        ' Cross-training: 20 min\\nStrength: 15 min\\nA planning aid\\, not medical adv',
        ' ice. With lasting pain\\, illness\\, pregnancy or a recent birth\\, under 18',
        ' \\, new to exercise or with a known disease: see a professional first. Loca',
        ' l rules and licensed practice come first.\\nQuestions: desk 4\\; mornings',
        'TRANSP:TRANSPARENT',
        'END:VEVENT',
        'END:VCALENDAR',
      ]),
    );
  });

  it('writes it in German, without the places where a screen may break a word', async () => {
    const output = await pageOf(`${oneHour} --lang de`, world);
    expect(output).toBe(
      file([
        'BEGIN:VCALENDAR',
        'VERSION:2.0',
        'PRODID:-//Weekwright//NONSGML Training calendar//EN',
        'NAME;LANGUAGE=de:Trainingsplan',
        'X-WR-CALNAME:Trainingsplan',
        'BEGIN:VEVENT',
        'UID:2027-01-11-week-ztntfp@weekwright',
        'DTSTAMP:20270110T093000Z',
        'LAST-MODIFIED:20270110T093000Z',
        'SEQUENCE:221736600',
        'DTSTART;VALUE=DATE:20270111',
        'DTEND;VALUE=DATE:20270118',
        'SUMMARY;LANGUAGE=de:Trainingswoche\\, 1 h',
        ...germanNotes(output),
        'TRANSP:TRANSPARENT',
        'END:VEVENT',
        'END:VCALENDAR',
      ]),
    );
  });
});

/** Where its lines are folded says tests/core/exchange/calendar/folding.test.ts; what they say is here. */
function germanNotes(output: string): readonly string[] {
  const notes = output.split('\r\n').filter((line) => /^(?:DESCRIPTION| )/.test(line));
  expect(notes.map((line) => line.replace(/^ /, '')).join('')).toBe(
    'DESCRIPTION;LANGUAGE=de:3 Einheiten\\, zusammen 1 Stunde.\\nLangsames Laufen: 25 min\\nAusgleichstraining: 20 min\\nKrafttraining: 15 min\\nEine Planungshilfe\\, kein medizinischer Rat. Bei anhaltendem Schmerz\\, Krankheit\\, Schwangerschaft oder kurz nach einer Geburt\\, unter 18 Jahren\\, neu im Sport oder mit bekannter Krankheit: zuerst fachlichen Rat holen. Örtliche Regeln und zugelassene Fachleute gehen vor.',
  );
  return notes;
}
