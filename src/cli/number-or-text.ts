/**
 * The number that a text holds in plain digits with a decimal point; any other text comes back as it is, for the
 * planner to refuse by name.
 *
 * @example numberOrText('4.5') // 4.5
 */
export function numberOrText(text: string): number | string {
  return /^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : text;
}
