import fc from 'fast-check';

/** Numbers on which formulas turn: wholes, halves, tenths, near-equal ones, very large and very small ones. */
export const anyNumber: fc.Arbitrary<number> = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -9, max: 9 }) },
  { weight: 2, arbitrary: fc.integer({ min: -40, max: 40 }).map((quarters) => quarters / 4) },
  { weight: 2, arbitrary: fc.integer({ min: -99, max: 99 }).map((hundredths) => hundredths / 100) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(0, 1, 0.1 + 0.2, 0.3, 1 + 1e-13, 0.07 * 100, 7, 1e300, -1e308, 5e-324, 1e-16),
  },
  { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
);

const literal = fc.oneof(
  fc.integer({ min: 0, max: 20 }).map(String),
  fc.integer({ min: 0, max: 400 }).map((hundredths) => String(hundredths / 100)),
  fc.constantFrom('0.5', '.25', '3.0', '1e3', '2.5E-2', 'true', 'false', '0.1', '0.3'),
);
const comparison = fc.constantFrom('<', '<=', '>', '>=', '==', '!=');

/**
 * Texts of formulas over these names, by the grammar that formulas have. Operators stand side by side without brackets,
 * so that their order is put to the test; only a choice is kept in brackets unless it comes last.
 */
export function formulaTexts(names: readonly string[], { depth = 4 } = {}): fc.Arbitrary<string> {
  const { any } = fc.letrec<{ any: string; part: string }>((tie) => {
    const [any, part] = [tie('any'), tie('part')];
    const leaf = fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...names) }, { weight: 2, arbitrary: literal });
    const binary = (signs: fc.Arbitrary<string>, space = ' ') =>
      fc.tuple(part, signs, part).map(([left, sign, right]) => `${left}${space}${sign}${space}${right}`);
    const listed = fc.array(any, { minLength: 1, maxLength: 3 }).map((args) => args.join(', '));
    return {
      any: fc.oneof(
        { weight: 5, arbitrary: part },
        { weight: 1, arbitrary: fc.tuple(part, part, any).map(([when, one, other]) => `${when} ? ${one} : ${other}`) },
      ),
      part: fc.oneof(
        { depthSize: 'small', maxDepth: depth, withCrossShrink: true },
        { weight: 3, arbitrary: leaf },
        { weight: 4, arbitrary: binary(fc.constantFrom('+', '-', '*', '/')) },
        { weight: 1, arbitrary: binary(fc.constantFrom('+', '-', '*', '%', '^'), '') },
        { weight: 1, arbitrary: binary(fc.constantFrom('mod', '%', '^')) },
        { weight: 2, arbitrary: binary(comparison) },
        { weight: 2, arbitrary: binary(fc.constantFrom('and', 'or')) },
        { weight: 2, arbitrary: any.map((inner) => `(${inner})`) },
        { weight: 1, arbitrary: part.map((inner) => `-${inner}`) },
        { weight: 1, arbitrary: part.map((inner) => `not ${inner}`) },
        {
          weight: 2,
          arbitrary: fc.tuple(fc.constantFrom('min', 'max', 'sum'), listed).map(([name, args]) => `${name}(${args})`),
        },
        {
          weight: 2,
          arbitrary: fc
            .tuple(fc.constantFrom('round', 'floor', 'ceil', 'abs', 'sqrt'), any)
            .map(([name, arg]) => `${name}(${arg})`),
        },
        { weight: 1, arbitrary: fc.tuple(any, any, any).map((args) => `clamp(${args.join(', ')})`) },
        { weight: 1, arbitrary: fc.tuple(part, comparison, part, comparison, part).map((parts) => parts.join(' ')) },
      ),
    };
  });
  return any;
}
