/**
 * How light a colour is, 0 to 1: relative luminance as WCAG 2.2 defines it.
 * @param {string} hex such as `#20618f`
 */
export function luminance(hex) {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    linear(Number.parseInt(hex.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * The contrast of two colours, 1 to 21.
 * @param {string} one @param {string} other
 */
export function contrast(one, other) {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

/** @param {number} channel */
const linear = (channel) => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
