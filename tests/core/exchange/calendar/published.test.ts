import { describe, expect, test } from 'vitest';
import published from '../../../../shared/checks/calendar.json' with { type: 'json' };
import { calendarText } from '../../../../src/exchange/calendar/calendar-text.js';
import { calendarWith, contentLinesOf, eventWith } from './calendars.js';
import { readByIcalJs, readByNodeIcal } from './readers.js';

const { days, folding, language, name, text: texts, times } = published;

describe(`what is printed: ${folding.source.cite}`, () => {
  test.each(folding.cases)(
    'a text folded elsewhere is the same content line: $section',
    ({ folded, unfolded, text }) => {
      const ours = calendarText(calendarWith([eventWith({ notes: text })], { language: '' }));
      const [property = ''] = unfolded.split(':');
      const lines = contentLinesOf(ours).map((line) => line.replace(/^DESCRIPTION:/, `${property}:`));
      expect(lines).toContain(unfolded);

      const theirs = folded.join('\r\n').replace(property, 'DESCRIPTION');
      const file = ['BEGIN:VCALENDAR', 'BEGIN:VEVENT', 'UID:1', 'DTSTART:20261129T060000', theirs, 'END:VEVENT'];
      const read = readByIcalJs([...file, 'END:VCALENDAR', ''].join('\r\n'));
      expect(read.map(({ notes }) => notes)).toEqual([text]);
      expect(readByIcalJs(ours)[0]?.notes).toBe(text);
    },
  );
});

describe(`what is printed: ${texts.source.cite}`, () => {
  test.each(texts.cases)('a text is escaped as there: $section', ({ text, value }) => {
    const file = calendarText(calendarWith([eventWith({ title: text, notes: text, uid: text })], { language: '' }));
    const lines = contentLinesOf(file);
    for (const property of ['SUMMARY', 'DESCRIPTION', 'UID']) expect(lines).toContain(`${property}:${value}`);
    for (const read of [readByIcalJs, readByNodeIcal]) {
      expect(read(file)).toMatchObject([{ uid: text, title: text, notes: text }]);
    }
  });
});

describe(`what is printed: ${language.source.cite}; ${name.source.cite}`, () => {
  test.each(language.cases)('a title tells its language: $section', ({ language: tag, text, line }) => {
    const file = calendarText(calendarWith([eventWith({ title: text })], { language: tag }));
    expect(contentLinesOf(file)).toContain(line);
  });

  test.each(name.cases)('a calendar has its name: $section', ({ text, line }) => {
    const file = calendarText(calendarWith([], { name: text, language: '' }));
    expect(contentLinesOf(file)).toEqual(expect.arrayContaining([line, `X-WR-CALNAME:${text}`]));
  });
});

describe(`what is printed: ${days.source.cite}; ${times.source.cite}`, () => {
  test.each(days.cases)('$days days from $date: $section', ({ uid, stamp, date, days: count, lines }) => {
    const file = calendarText(calendarWith([eventWith({ uid, date, days: count })], { stamp }));
    expect(contentLinesOf(file)).toEqual(expect.arrayContaining(lines));
  });

  test.each(times.cases)('$start on $date: $section', ({ date, start, line }) => {
    const file = calendarText(calendarWith([eventWith({ date, time: { start, minutes: 60 } })]));
    expect(contentLinesOf(file)).toContain(line);
  });
});
