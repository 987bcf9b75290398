import { describe, expect, it, test } from 'vitest';
import { readSource, sourceFiles } from './imports.js';
import { fixedMarks } from './marks.js';

/** Files that join by marks what is no text of a language, and why that is so. */
const exceptions: Readonly<Record<string, string>> = {
  'src/cli/handout-options.ts': 'names of options, as they are typed',
  'src/cli/help.ts': 'names of columns, fields, movements and choices, as they are typed',
  'src/cli/option-values.ts': 'choices, as they are typed',
  'src/cli/read-arguments.ts': 'names of options, as they are typed',
  'src/cli/run.ts': 'names of commands, as they are typed',
  'src/frame/fault-sentence.ts': 'parameters of an address and their values, as they are typed',
};

const speaking = sourceFiles.filter((file) => /^src\/(?:cli|element|frame|words)\//.test(file));
const joining = speaking.filter((file) => fixedMarks(readSource(file)).length > 0);

describe('texts that people read', () => {
  // French has a narrow no-break space before a colon, Arabic has a comma of its own: src/words/joined.ts knows.
  test('are joined by no fixed mark, but by those of the locales', () => {
    const fixed = joining.filter((file) => !Object.hasOwn(exceptions, file));
    expect(fixed.flatMap((file) => fixedMarks(readSource(file)).map((place) => `${file}: ${place}`))).toEqual([]);
  });

  test('have no exception that is not needed', () => {
    expect(Object.keys(exceptions).filter((file) => !joining.includes(file))).toEqual([]);
  });
});

describe('fixedMarks(source)', () => {
  it.each([
    ["names.join(', ')"],
    ["[cost, status].join('; ')"],
    ["head.join(' : ')"],
    ["name + ': '"],
    ['`${name}: ${value}`'],
    ['`${name}؛ ${value}`'],
    ['`${name}:`'],
    ['`; ${value}`'],
    ['html`<p><b>${hours}</b>, ${phase}.</p>`'],
    ['html`<li class=${kind}>\n  ${name}: ${button}\n</li>`'],
    ['html`<p role="img" aria-label="${title}: ${text}"></p>`'],
    ['html`<b class=${kind}>, ${text}</b>`'],
    ['html`<b>${text}</b>, <i class=${kind}>${more}</i>`'],
  ])('finds %s', (source) => {
    expect(fixedMarks(source)).toHaveLength(1);
  });

  it.each([
    ["cells.join(',')"],
    ["lines.join(' ')"],
    ["index + ','"],
    ['`${hours}:${minutes}`'],
    ['`${text}.`'],
    ['`${text} (${status})`'],
    ['`UID:${id}`'],
    ['css`:host { color: ${colour}; margin: ${space}; }`'],
    ['html`<p title=${title}>${text}</p>`'],
    ["say('mark.colon', { head, rest })"],
  ])('does not find %s', (source) => {
    expect(fixedMarks(source)).toEqual([]);
  });
});
