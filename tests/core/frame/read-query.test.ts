import { describe, expect, it } from 'vitest';
import { readQuery } from '../../../src/frame/read-query.js';

/** As a browser answers: yes to a few values, and to all that is not settled before it is used. */
const supports = (_: string, value: string): boolean =>
  ['#fff', '#20618f', 'tomato', '8px', 'inherit', 'light-dark(#fff, #000)'].includes(value.trim()) ||
  value.includes('var(');
const read = (search: string) => readQuery(search, supports);
const faultsOf = (search: string) => read(search).faults.map(({ name, code, allowed }) => [name, code, allowed]);

describe('readQuery(search, supports)', () => {
  it('finds nothing in an empty query', () => {
    const nothing = { attributes: {}, theme: {}, lang: null, scheme: null, parent: null, faults: [] };
    expect(read('')).toEqual(nothing);
    expect(read('?')).toEqual(nothing);
  });

  it('takes attributes as they are, for the planner checks them', () => {
    expect(read('?hours=99&days=60,0,45&contact=A+%26+B+%3C3').attributes).toEqual({
      hours: '99',
      days: '60,0,45',
      contact: 'A & B <3',
    });
  });

  it('takes colours and the rounding as custom properties', () => {
    expect(read('?accent=%2320618f&slow=tomato&radius=8px&ground=light-dark(%23fff,+%23000)').theme).toEqual({
      '--weekwright-accent': '#20618f',
      '--weekwright-slow': 'tomato',
      '--weekwright-radius': '8px',
      '--weekwright-ground': 'light-dark(#fff, #000)',
    });
  });

  it.each(['', 'greenish', 'var(--x)', 'VAR(--x)', 'inherit', ' Unset '])('refuses the colour %j', (value) => {
    const search = `?${new URLSearchParams({ text: value })}`;
    expect(faultsOf(search)).toEqual([['text', 'not-one-of', 'colour']]);
    expect(read(search).theme).toEqual({});
  });

  it('refuses a rounding that is none', () => {
    expect(faultsOf('?radius=round')).toEqual([['radius', 'not-one-of', 'length']]);
  });

  it.each([
    ['de', true],
    ['de-AT', true],
    ['AR', true],
    ['nl', false],
    ['', false],
    ['constructor', false],
  ])('takes the language %j: %j', (lang, isTaken) => {
    const { lang: taken, faults } = read(`?lang=${lang}`);
    expect(taken).toBe(isTaken ? lang : null);
    expect(faults).toHaveLength(isTaken ? 0 : 1);
  });

  it.each([
    ['light', true],
    ['dark', true],
    ['dim', false],
    ['Light', false],
  ])('takes the scheme %j: %j', (scheme, isTaken) => {
    expect(read(`?scheme=${scheme}`).scheme).toBe(isTaken ? scheme : null);
    expect(faultsOf(`?scheme=${scheme}`)).toEqual(isTaken ? [] : [['scheme', 'not-one-of', ['light', 'dark']]]);
  });

  it.each([
    ['https://club.example', true],
    ['http://127.0.0.1:8080', true],
    ['https://club.example/', false],
    ['https://club.example/page', false],
    ['https://Club.example', false],
    ['https://club.example:443', false],
    ['club.example', false],
    ['*', false],
    ['null', false],
    ['', false],
    ['javascript:alert(1)', false],
    ['data:text/html,x', false],
  ])('takes the parent %j: %j', (parent, isTaken) => {
    const search = `?${new URLSearchParams({ parent })}`;
    expect(read(search).parent).toBe(isTaken ? parent : null);
    expect(faultsOf(search)).toEqual(isTaken ? [] : [['parent', 'not-one-of', 'origin']]);
  });

  it.each(['hour', 'Hours', 'strengthCap', 'method', 'onclick', 'style', '__proto__', 'constructor', ''])(
    'tells the unknown name %j',
    (name) => {
      const { attributes, theme, faults } = read(`?${new URLSearchParams([[name, 'x']])}`);
      expect([attributes, theme]).toEqual([{}, {}]);
      expect(faults).toMatchObject([{ name, value: 'x', code: 'unknown-field' }]);
    },
  );

  it('takes the first of two, and tells the other', () => {
    const { attributes, faults } = read('?hours=7&hours=8');
    expect(attributes).toEqual({ hours: '7' });
    expect(faults).toMatchObject([{ name: 'hours', value: '8', code: 'duplicate' }]);
  });

  it('takes what is good beside what is not', () => {
    const { attributes, theme, faults } = read('?hours=7&accent=nope&ground=%23fff&x=1');
    expect(attributes).toEqual({ hours: '7' });
    expect(theme).toEqual({ '--weekwright-ground': '#fff' });
    expect(faults.map(({ name }) => name)).toEqual(['accent', 'x']);
  });
});
