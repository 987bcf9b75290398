import { parseArgs } from 'node:util';
import type { Values } from '../words/phrases.js';
import { allOptions, commands, isOptionName, optionKind, optionsOf, type Command, type OptionName } from './options.js';

/** Something wrong with the command line; words for `key` are in `texts`. */
export interface ArgumentFault {
  readonly key: string;
  readonly values: Values;
}

export interface Arguments {
  readonly command: string | undefined;
  /** Texts of options that take a value; a switch that was set has an empty text. */
  readonly options: Readonly<Partial<Record<OptionName, string>>>;
  readonly faults: readonly ArgumentFault[];
}

type Token = ReturnType<typeof tokensOf>[number];
type OptionToken = Extract<Token, { kind: 'option' }>;

/** Reads a command line; every fault is reported, and what is sound is read all the same. */
export function readArguments(argv: readonly string[]): Arguments {
  const tokens = tokensOf(argv);
  const [command, ...extra] = tokens.flatMap((token) => (token.kind === 'positional' ? [token.value] : []));
  const options: Partial<Record<OptionName, string>> = {};
  const faults: ArgumentFault[] = [];
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const fault = optionFault(token, { known: options, allowed: allowedIn(command) });
    if (fault) faults.push(fault);
    else if (isOptionName(token.name)) options[token.name] = token.value ?? '';
  }
  const surplus = extra.map((given) => ({ key: 'fault.extra', values: { given: quoted(given) } }));
  return { command, options, faults: [...faults, ...surplus] };
}

/** Node's strict mode stops at the first fault, in words of its own: so it only cuts the line up. */
function tokensOf(argv: readonly string[]) {
  const types = Object.fromEntries(Object.entries(allOptions).map(([name, { type }]) => [name, { type }]));
  const options = { ...types, help: { type: 'boolean', short: 'h' } } as const;
  return parseArgs({ args: argv.map(emptyWhereMissing), options, strict: false, allowPositionals: true, tokens: true })
    .tokens;
}

/** `--hours --phase build` forgets a value: Node would take `--phase` for it and leave `build` over. */
function emptyWhereMissing(argument: string, index: number, argv: readonly string[]): string {
  const name = argument.slice(2);
  const takesValue = argument.startsWith('--') && isOptionName(name) && optionKind(name).type === 'string';
  return takesValue && argv[index + 1]?.startsWith('--') ? `${argument}=` : argument;
}

/** The options of the command, or all where there is none of that name. */
function allowedIn(command: string | undefined): readonly OptionName[] {
  const known = commands.find((each) => each === command);
  const of = (each: Command): readonly OptionName[] => optionsOf(each);
  return known ? of(known) : [...new Set(commands.flatMap(of))];
}

interface OptionPlace {
  /** What was read so far. */
  readonly known: Arguments['options'];
  readonly allowed: readonly OptionName[];
}

function optionFault(token: OptionToken, { known, allowed }: OptionPlace): ArgumentFault | null {
  const { name, rawName: option, value } = token;
  if (!isOptionName(name) || !allowed.includes(name))
    return {
      key: 'fault.unknown-option',
      values: { given: option, allowed: allowed.map((each) => `--${each}`).join(', ') },
    };
  if (Object.hasOwn(known, name)) return { key: 'fault.twice', values: { option } };
  const takesValue = optionKind(name).type === 'string';
  if (!takesValue && value !== undefined)
    return { key: 'fault.unwanted-value', values: { option, given: quoted(value) } };
  return takesValue && !value ? { key: 'fault.missing-value', values: { option } } : null;
}

const quoted = (text: string): string => JSON.stringify(text);
