import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonFaultLine } from '../../../src/exchange/json-line.js';
import { patience, runs } from '../../reference/runs.js';
import { inShort } from '../in-short.js';
import { wholeFile } from '../plan/file/file-documents.js';
import { slipped } from '../plan/file/file-mutations.js';
import { firstFault, lineAt, placeByV8 } from './json-reference.js';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

const rows: Readonly<Record<string, readonly (readonly [text: string, line: number])[]>> = {
  'something missing at the end': [
    ['', 1],
    ['\n\n', 1],
    ['{', 1],
    ['{\n', 1],
    ['{\n  "a": 1\n\n\n', 2],
    ['{\n  "a":\n', 2],
    ['{\n  "a"', 2],
    ['[\n  1,\n', 2],
    ['[\n  1,\n  [2, 3]', 3],
    ['-', 1],
    ['[\n1e', 2],
  ],
  'something too much at the end': [
    ['{}\n}', 2],
    ['{}\n\n{}', 3],
    ['1\n2', 2],
    ['null,', 1],
    ['[1]\n\n\n]', 4],
    ['{}\n\u00a0', 2],
  ],
  commas: [
    ['{\n  "a": 1,\n}', 3],
    ['[\n  1,\n]', 3],
    ['[\n  1\n  2\n]', 3],
    ['{\n  "a": 1\n  "b": 2\n}', 3],
    ['[,\n1]', 1],
    ['{\n,"a": 1}', 2],
    ['[1,\n,2]', 2],
    ['{"a":\n,}', 2],
  ],
  'brackets and colons': [
    ['{\n  "a": [1,\n  2}\n}', 3],
    ['[\n  {"a": 1]\n]', 2],
    ['{\n  "a" 1\n}', 2],
    ['{\n  "a"\n  1\n}', 3],
    ['{"a"::\n1}', 1],
    ['[\n"a": 1]', 2],
    [']\n[', 1],
    ['\n}', 2],
  ],
  names: [
    ['{\n  "a": 1,\n  b: 2\n}', 3],
    ["{\n  'a': 1\n}", 2],
    ['{\n  1: 2\n}', 2],
    ['{\n  true: 2\n}', 2],
    ['{\n  [1]: 2\n}', 2],
  ],
  texts: [
    ['{\n  "a": "open\n}', 2],
    ['{\n  "a: 1,\n  "b": 2\n}', 2],
    ['["\t"]', 1],
    ['[\n"\\x"]', 2],
    ['[\n"\\u12g4"]', 2],
    ['["a\\\n"]', 1],
    ['"', 1],
    ['["\\ud83', 1],
  ],
  'numbers and words': [
    ['[\n01]', 2],
    ['[1.\n]', 1],
    ['[\n.5]', 2],
    ['[\n+1]', 2],
    ['[-\n1]', 1],
    ['[\nNaN]', 2],
    ['[\nInfinity]', 2],
    ['[\n1,\ntru\n]', 3],
    ['[\nTrue]', 2],
    ['[\nundefined]', 2],
    ['[\nnulls]', 2],
    ['[0x10]', 1],
    ['[1\n_000]', 2],
  ],
  'what is in other formats': [
    ['{\n  // a comment\n  "a": 1\n}', 2],
    ['{\n  "a": 1 /* one */\n}', 2],
    ['<html>\n</html>', 1],
    ['date,minutes\n2026-11-23,45', 1],
    ['\u{feff}{}', 1],
    ['{"a":\u00a0\n1}', 1],
    ['{"a":\n\u20281}', 2],
    ['{\f\n}', 1],
    ['{"a":\v\n\n1}', 1],
  ],
  'lines that end otherwise': [
    ['{\r\n  "a": 1,\r\n  b\r\n}', 3],
    ['{\r  "a": 1,\r  b\r}', 3],
    ['{\r\n\r\n  b\r\n}', 3],
    // What ends a line elsewhere ends none here.
    ['{"a": "\u2028\u2029\u0085",\n b}', 2],
  ],
};

describe.each(Object.entries(rows))('the line of a fault: %s', (_, faults) => {
  test.each(faults.map((row) => [inShort(row[0]), ...row] as const))('%s', (__, text, line) => {
    expect(isJson(text)).toBe(false);
    expect(jsonFaultLine(text)).toBe(line);
  });
});

/** Texts as they stand in files: on many lines, with lines that end in either way, and on one. */
const sources = [
  JSON.stringify(wholeFile(), null, 2),
  JSON.stringify(wholeFile()['record'], null, 1).replaceAll('\n', '\r\n'),
  '{\n  "a": [1, -2.5e+10,\n\n 0],\n  "b": { "c": null,\n "d": true },\n "e\\n\\u00e9": [[], {},\n false, "x"]\n}\n',
  '[1,\r2,\r\r{"a":\r"b"}]',
];
const faulty = fc.oneof(...sources.map(slipped)).filter((text) => !isJson(text));

describe('the line of a fault put into JSON at random', { timeout: patience }, () => {
  test('is that of the first character after which nothing makes JSON of the text; of its last where one is missing', () => {
    let missing = 0;
    fc.assert(
      fc.property(faulty, (text) => {
        const at = firstFault(text);
        if (at === null) throw new Error('the reference takes the text for JSON');
        const content = text.replace(/[ \t\r\n]+$/, '');
        if (at >= content.length) missing += 1;
        expect(jsonFaultLine(text)).toBe(at >= content.length ? lineAt(content, content.length) : lineAt(text, at));
      }),
      runs(3000, 100_000),
    );
    expect(missing).toBeGreaterThan(50);
  });

  test('is where V8 sees it, wherever V8 says so', () => {
    let said = 0;
    fc.assert(
      fc.property(faulty, (text) => {
        const [place, content] = [placeByV8(text), text.replace(/[ \t\r\n]+$/, '')];
        if (place === null) return;
        said += 1;
        // At the end of a text V8 tells the end of the white space there, where nobody looks for what is missing.
        expect(jsonFaultLine(text)).toBe(lineAt(text, Math.min(place, content.length)));
      }),
      runs(3000, 100_000),
    );
    expect(said).toBeGreaterThan(500);
  });

  test('takes for JSON what the platform does: the reference of these tests is right', () => {
    fc.assert(
      fc.property(fc.oneof(...sources.map(slipped), fc.json()), (text) => {
        expect(firstFault(text) === null).toBe(isJson(text));
      }),
      runs(1000, 50_000),
    );
  });
});
