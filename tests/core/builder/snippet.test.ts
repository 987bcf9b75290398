import { describe, expect, it } from 'vitest';
import type { Choices } from '../../../demo/builder/chosen.js';
import { methodText } from '../../../demo/builder/planner-of.js';
import { writeSnippet } from '../../../demo/builder/snippet.js';

const nothing: Choices = {
  output: 'tag',
  folder: '/weekwright/',
  fits: true,
  panels: ['split'],
  lang: '',
  scheme: '',
  colours: {},
  start: {},
  days: ['', '', '', '', '', '', ''],
  contact: '',
  mayKeep: true,
  method: '',
  methodAddress: '/weekwright/method.json',
};
const write = (choices: Partial<Choices>): string => writeSnippet({ ...nothing, ...choices });
const addressIn = (snippet: string): string => /src="([^"]*)"/.exec(snippet)?.[1]?.replaceAll('&amp;', '&') ?? '';

describe('writeSnippet(choices), a tag', () => {
  it('is a script and a bare tag where nothing is chosen', () => {
    expect(write({})).toBe(
      [
        '<script type="module" src="/weekwright/weekwright.js"></script>',
        '',
        '<weekwright-planner>',
        '  <p>The training week on this page needs JavaScript.</p>',
        '</weekwright-planner>',
      ].join('\n'),
    );
  });

  it.each<[string, Partial<Choices>, string]>([
    ['panels in their order', { panels: ['week', 'split'] }, '<weekwright-planner panels="week split">'],
    ['no panels', { panels: [] }, '<weekwright-planner>'],
    ['start values', { start: { hours: '4', phase: '' } }, '<weekwright-planner hours="4">'],
    ['days', { days: ['60', '', '45', '', '', '90', ''] }, '<weekwright-planner days="60,0,45,0,0,90,0">'],
    ['no keeping', { mayKeep: false }, '<weekwright-planner storage="none">'],
    [
      'colours and scheme',
      { colours: { accent: '#7a2464' }, scheme: 'light' },
      '<weekwright-planner style="color-scheme: light; --weekwright-accent: #7a2464">',
    ],
    [
      'quotes and marks',
      { contact: `"A" & 'B' <c>` },
      `<weekwright-planner contact="&quot;A&quot; &amp; 'B' &lt;c&gt;">`,
    ],
    ['an entity as text', { contact: '&quot;' }, '<weekwright-planner contact="&amp;quot;">'],
    ['a folder without its end', { folder: '/w' }, 'src="/w/weekwright.js"'],
    ['a folder with a quote', { folder: '/"><b>/' }, 'src="/&quot;&gt;&lt;b&gt;/weekwright.js"'],
  ])('has %s', (_, choices, expected) => {
    expect(write(choices)).toContain(expected);
  });

  it('speaks the language chosen also without scripts', () => {
    expect(write({ lang: 'de' })).toContain(
      '<weekwright-planner lang="de">\n  <p>Die Trainingswoche auf dieser Seite braucht JavaScript.</p>',
    );
  });

  it('has each attribute on a line of its own where one line is too long', () => {
    expect(write({ contact: 'x'.repeat(80), panels: ['week', 'sheet'] })).toContain(
      `<weekwright-planner\n  panels="week sheet"\n  contact="${'x'.repeat(80)}"\n>`,
    );
  });

  it('has a method that cannot end its script', () => {
    const snippet = write({ method: '{ "name": "</script><b>", "note": "<!--" }' });
    expect(snippet).toContain(
      '<script type="application/json" slot="method">\n{\n  "name": "\\u003c/script>\\u003cb>"',
    );
    expect(snippet.match(/<\/script>/g)).toHaveLength(2);
    expect(snippet).not.toContain('<!--');
  });

  it('leaves out what is no JSON', () => {
    expect(write({ method: '{ "name": ' })).toBe(write({}));
  });
});

describe('writeSnippet(choices), a frame', () => {
  it('is a frame and its script', () => {
    expect(write({ output: 'frame' })).toBe(
      [
        '<iframe',
        '  src="/weekwright/embed.html"',
        '  title="Training week"',
        '  width="100%"',
        '  height="900"',
        '  style="border: 0"',
        '  loading="lazy"',
        '  allow="clipboard-write"',
        '></iframe>',
        '<script async src="/weekwright/weekwright-frame.js"></script>',
      ].join('\n'),
    );
  });

  it('is the frame alone where it keeps its height', () => {
    expect(write({ output: 'frame', fits: false })).not.toContain('<script');
  });

  it('has all choices in its address', () => {
    const snippet = write({
      output: 'frame',
      panels: ['week', 'split'],
      lang: 'fr',
      scheme: 'dark',
      colours: { accent: '#7a2464', ground: '#111111' },
      start: { hours: '4.5', 'event-date': '2027-05-02' },
      days: ['60', '', '', '', '', '', ''],
      contact: '"A" & B = <c>#+%',
      mayKeep: false,
    });
    expect(snippet).toContain('&amp;');
    expect(snippet).toContain('title="Semaine d’entraînement"');
    const { pathname, searchParams, hash } = new URL(addressIn(snippet), 'https://club.example');
    expect([pathname, hash]).toEqual(['/weekwright/embed.html', '']);
    expect([...searchParams]).toEqual([
      ['lang', 'fr'],
      ['panels', 'week split'],
      ['hours', '4.5'],
      ['event-date', '2027-05-02'],
      ['days', '60,0,0,0,0,0,0'],
      ['contact', '"A" & B = <c>#+%'],
      ['storage', 'none'],
      ['scheme', 'dark'],
      ['accent', '#7a2464'],
      ['ground', '#111111'],
    ]);
  });

  it('names the file of a method, where there is one', () => {
    const address = (method: string) => new URL(addressIn(write({ output: 'frame', method })), 'https://club.example');
    expect(address('{}').searchParams.get('method-src')).toBe('/weekwright/method.json');
    expect(address('').searchParams.has('method-src')).toBe(false);
    expect(address('{').searchParams.has('method-src')).toBe(false);
  });
});

describe('methodText(text)', () => {
  it('says the same as before', () => {
    const method = { name: '<!-- </script> & "', list: [1, null, true] };
    expect(JSON.parse(methodText(JSON.stringify(method)) ?? '')).toEqual(method);
  });

  it.each(['', ' ', '{', 'undefined'])('gives nothing for %j', (text) => {
    expect(methodText(text)).toBeNull();
  });
});
