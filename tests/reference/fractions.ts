/** An exact fraction, its denominator above zero. */
export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

/** A whole number of parts of a whole: `fraction(1, 4)` is a quarter. */
export function fraction(over: number | bigint, under: number | bigint = 1): Fraction {
  return reduced(BigInt(over), BigInt(under));
}

/** A decimal of at most six places, exactly. */
export function decimal(value: number): Fraction {
  const millionths = Math.round(value * 1e6);
  if (millionths / 1e6 !== value) throw new RangeError(`${String(value)} is no decimal of six places`);
  return fraction(millionths, 1_000_000);
}

export const plus = (a: Fraction, b: Fraction): Fraction =>
  reduced(a.over * b.under + b.over * a.under, a.under * b.under);
export const minus = (a: Fraction, b: Fraction): Fraction => plus(a, { over: -b.over, under: b.under });
export const times = (a: Fraction, b: Fraction): Fraction => reduced(a.over * b.over, a.under * b.under);
export const dividedBy = (a: Fraction, b: Fraction): Fraction => reduced(a.over * b.under, a.under * b.over);
/** Below zero where `a` is less than `b`, above where it is more. */
export const compare = (a: Fraction, b: Fraction): number => Number(signOf(a.over * b.under - b.over * a.under));
export const isLess = (a: Fraction, b: Fraction): boolean => compare(a, b) < 0;
export const sumOf = (all: readonly Fraction[]): Fraction => all.reduce(plus, zero);
export const toNumber = ({ over, under }: Fraction): number => {
  const whole = over / under;
  return Number(whole) + Number(((over - whole * under) * 10n ** 18n) / under) / 1e18;
};
export const zero: Fraction = { over: 0n, under: 1n };

/** The whole number nearest to a fraction that is not negative, halves up. */
export const nearestWhole = ({ over, under }: Fraction): bigint => (2n * over + under) / (2n * under);

const signOf = (value: bigint): bigint => (value > 0n ? 1n : value < 0n ? -1n : 0n);

function reduced(over: bigint, under: bigint): Fraction {
  if (under === 0n) throw new RangeError('a fraction over nothing');
  const divisor = divisorOf(over < 0n ? -over : over, under < 0n ? -under : under);
  const sign = under < 0n ? -1n : 1n;
  return { over: (sign * over) / divisor, under: (sign * under) / divisor };
}

function divisorOf(a: bigint, b: bigint): bigint {
  return b === 0n ? (a === 0n ? 1n : a) : divisorOf(b, a % b);
}
