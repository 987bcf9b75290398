import { describe, expect, it } from 'vitest';
import evidence from '../../../shared/evidence/evidence.json';
import defaultMethod from '../../../shared/methods/default.json';
import { areaIds, type Foundation } from '../../../src/plan/basis/foundations.js';
import { linesOf, ran } from './fake-io.js';
import { jsonOf, leaks, pageOf, paragraph } from './pages.js';

interface BasisDocument {
  readonly areas: readonly {
    readonly id: string;
    readonly foundations: readonly (Foundation & { readonly sources: readonly string[] })[];
  }[];
  readonly differences: readonly { readonly id: string; readonly sources: readonly string[] }[];
}

const documentOf = async (line = 'basis'): Promise<BasisDocument> => (await jsonOf(line)) as BasisDocument;
const counted = /^Numbers and rules of this method: (\d+) published, (\d+) common practice, and (\d+) assumptions\.$/;

describe('weekwright basis', () => {
  it('says first how much is published, common practice and assumption', async () => {
    const [head = ''] = linesOf(await pageOf('basis'));
    const all = (await documentOf()).areas.flatMap(({ foundations }) => foundations);
    const count = (wanted: string): number => all.filter(({ status }) => status === wanted).length;
    expect(counted.exec(head)?.slice(1).map(Number)).toEqual(['published', 'common practice', 'assumption'].map(count));
  });

  it('lists where studies and common practice differ, with the sources of each', async () => {
    const [title, ...lines] = paragraph(await pageOf('basis'), /^Where studies and common practice differ\n/);
    expect(title).toBe('Where studies and common practice differ');
    const named = lines.filter((line) => line.startsWith('- '));
    expect(named).toHaveLength(defaultMethod.checks.differences.length);
    const citeOf = (id: string): string => evidence.find((entry) => entry.id === id)?.cite ?? id;
    // Two findings of one work are one line.
    const cites = defaultMethod.checks.differences.flatMap((each) => [...new Set(each.sources.map(citeOf))]);
    expect(lines.length - named.length).toBe(cites.length);
    const indented = lines.filter((line) => line.startsWith('    ')).map((line) => line.trim());
    expect(indented.map((line, index) => line.startsWith(cites[index] ?? '?'))).toEqual(cites.map(() => true));
  });

  it('lists every default part by part, each with how well it is founded', async () => {
    const output = await pageOf('basis');
    const titles = [
      ...['How the week is divided', 'Rules that correct it', 'Sessions and rounding', 'The days of the week'],
      ...['The season', 'Paces and heart rates', 'Strength by sets', 'Checks and questions before the start'],
    ];
    const { areas } = await documentOf();
    expect(areas.map(({ id }) => id)).toEqual(areaIds);
    for (const [index, title] of titles.entries()) {
      const lines = paragraph(output, new RegExp(`^${title}\n`)).filter((line) => line.startsWith('- '));
      expect([title, lines.length]).toEqual([title, areas[index]?.foundations.length]);
      for (const line of lines)
        expect(line).toMatch(/ \((?:published|common practice, no published source|assumption, adjustable)\)$/);
    }
    expect(output).toMatch(/\n\nA planning aid, not medical advice\. .*\n$/);
    expect(output).not.toMatch(leaks);
  });

  it('speaks German', async () => {
    const output = await pageOf('basis --lang de');
    expect(linesOf(output)[0]).toMatch(
      /^Zahlen und Regeln dieser Methode: \d+ veröffentlicht, \d+ gängige Praxis und \d+ Annahmen\.$/,
    );
    expect(output).toContain('\n\nWo Studien und gängige Praxis auseinandergehen\n- ');
    expect(output).not.toMatch(leaks);
  });

  it("counts and shows what a coach's own method rests on", async () => {
    const [first, ...others] = defaultMethod.rules;
    const told = { name: 'Our cap', reason: 'We saw it in our club.', status: 'assumption', sources: ['Club diary'] };
    const own = { ...defaultMethod, id: 'own', rules: [{ ...first, ...told }, ...others] };
    const world = { files: { 'own.json': JSON.stringify(own) } };
    const output = await pageOf('basis --method own.json', world);
    const lines = paragraph(output, /^Rules that correct it\n/);
    expect(lines[1]).toBe('- Our cap: We saw it in our club. (assumption, adjustable)');
    expect(lines[2]?.trim()).toBe('Club diary');
    const document = await jsonOf('basis --method own.json', world);
    expect(document).toMatchObject({ method: { id: 'own' } });
    const before =
      counted
        .exec(linesOf(await pageOf('basis'))[0] ?? '')
        ?.slice(1)
        .map(Number) ?? [];
    const after =
      counted
        .exec(linesOf(output)[0] ?? '')
        ?.slice(1)
        .map(Number) ?? [];
    // The first rule, the strength cap, is common practice by default.
    expect(first?.status).toBe('common practice');
    expect(after.map((count, index) => count - (before[index] ?? NaN))).toEqual([0, -1, 1]);
  });

  it.each<[string, string]>([
    ['--hours 4', '--hours is not an option here. Allowed: --method, --json, --lang, --help, --version.'],
    ['--lang nl', '--lang is "nl"; allowed: en, ar, de, es, or fr.'],
    ['all', '"all" is one argument too many.'],
  ])('%s', async (options, expected) => {
    const { code, output, errors } = await ran(`basis ${options}`.split(' '));
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(linesOf(errors)[0]).toBe(expected);
  });

  it('says what is wrong with a method file', async () => {
    expect(await ran('basis --method gone.json'.split(' '))).toMatchObject({
      code: 2,
      output: '',
      errors: '--method could not be read from "gone.json" (there is no such file).\n',
    });
    const { code, errors } = await ran('basis --method own.json'.split(' '), { files: { 'own.json': '{}' } });
    expect(code).toBe(2);
    expect(errors).toMatch(/^This method cannot be used yet:\n- /);
  });
});

describe('weekwright basis --json', () => {
  it('has ids, statuses and sources, the same in every language', async () => {
    const document = await documentOf();
    expect(document).toMatchObject({ format: 'weekwright-basis', version: 1, method: { id: 'weekwright' } });
    expect(document.differences.map(({ id }) => id)).toEqual(defaultMethod.checks.differences.map(({ id }) => id));
    const known = new Set(evidence.map(({ id }) => id));
    const foundations = document.areas.flatMap((area) => area.foundations);
    const sources = [...foundations, ...document.differences].flatMap((each) => each.sources);
    expect(sources.filter((id) => !known.has(id))).toEqual([]);
    expect(await ran('basis --json --lang de'.split(' '))).toEqual(await ran('basis --json'.split(' ')));
  });
});

describe('weekwright basis --help', () => {
  it.each(['en', 'de'])('lists its options in %s', async (lang) => {
    const output = await pageOf(`basis --help --lang ${lang}`);
    expect(output.match(/^ {2}--[a-z]+/gm)?.map((line) => line.trim())).toEqual(
      ['method', 'json', 'lang', 'help', 'version'].map((name) => `--${name}`),
    );
    expect(output).not.toMatch(/option\.|[{}]/);
  });
});
