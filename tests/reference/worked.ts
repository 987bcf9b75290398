/**
 * The number a worked line ends in: `29.25 + 19.5 = 48.75` is 48.75.
 *
 * Knows `+`, `-`, `*` and `/` on plain numbers, products first. Throws where the two sides of `=` are not equal, so that
 * a slip in a hand-written table cannot pass for a result.
 */
export function worked(line: string): number {
  const values = line.split('=').map(sum);
  const last = values.at(-1) ?? NaN;
  if (!values.every((value) => Math.abs(value - last) < 1e-9)) throw new Error(`The sides differ in "${line}"`);
  return last;
}

function sum(text: string): number {
  const terms = ` + ${text.trim()}`.match(/ [+-] [^ ]+/g) ?? [];
  if (terms.join('') !== ` + ${text.trim()}`) throw new Error(`Cannot read "${text}"`);
  return terms.reduce((total, term) => total + (term.startsWith(' -') ? -1 : 1) * product(term.slice(3)), 0);
}

function product(text: string): number {
  const [first = '', ...rest] = text.split(/(?=[*/])/);
  return rest.reduce((value, factor) => {
    const by = readNumber(factor.slice(1));
    return factor.startsWith('*') ? value * by : value / by;
  }, readNumber(first));
}

function readNumber(text: string): number {
  if (!/^\d*\.?\d+$/.test(text)) throw new Error(`"${text}" is not a number`);
  return Number(text);
}
