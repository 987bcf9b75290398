import { describe, expect, test } from 'vitest';
import { eventId } from '../../../../src/words/handout/event-id.js';

describe('the identifier of an event', () => {
  // FNV-1a of 32 bits: the published values of the empty text, "a" and "foobar" (Fowler, Noll and Vo; from memory).
  test.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('has the number of the name "%s"', (name, hash) => {
    expect(eventId(name, '2026-11-30-slow-1')).toBe(`2026-11-30-slow-1-${hash.toString(36)}@weekwright`);
  });

  test('does not show the name', () => {
    expect(eventId('Ida', 'x')).not.toContain('Ida');
  });
});
