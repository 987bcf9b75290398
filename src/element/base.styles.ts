import { css } from 'lit';

/*
 * Measures and colours of every panel. Four sizes of type, spacing in steps of 4 pixels, one accent; the five category
 * colours keep 3 : 1 against the ground in both schemes and stay apart for any colour vision
 * (tests/core/element/colours.test.ts).
 */
export const baseStyles = css`
  :host {
    display: block;
  }

  :host([hidden]) {
    display: none;
  }

  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }

  /* On the inside, not on the host: there a page's own --accent would be in the way. */
  .planner {
    --accent: var(--weekwright-accent, light-dark(#20618f, #86c1ea));
    --ground: var(--weekwright-ground, light-dark(#ffffff, #16191d));
    --text: var(--weekwright-text, light-dark(#1b1f24, #e8ebee));
    --muted: var(--weekwright-muted, light-dark(#565d66, #a9b1ba));
    --line: var(--weekwright-line, light-dark(#d9dde2, #353b43));
    --edge: light-dark(#7b838d, #7f8893);
    --tint: color-mix(in oklab, var(--accent) 8%, var(--ground));
    --alert: light-dark(#9c2f1a, #ffab94);
    --slow: var(--weekwright-slow, light-dark(#1a8fd0, #5cb8da));
    --tempo: var(--weekwright-tempo, light-dark(#753e81, #b35fac));
    --intervals: var(--weekwright-intervals, light-dark(#a14206, #fab36d));
    --cross: var(--weekwright-cross, light-dark(#78856c, #688e3b));
    --strength: var(--weekwright-strength, light-dark(#1c2c51, #dee8fd));
    --radius: var(--weekwright-radius, 12px);
    --small: 0.8125em;
    --large: 1.25em;
    --gutter: clamp(12px, 3cqi, 32px);
    --huge: clamp(1.375em, 4.2cqi + 0.5em, 2.125em);
    container: planner / inline-size;
    /* What it asks for where a page gives it the width of its content: a dialog, a flex row. */
    contain-intrinsic-inline-size: 20em;
    background: var(--ground);
    color: var(--text);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    font-variant-numeric: tabular-nums lining-nums;
    line-height: 1.4;
    text-align: start;
    /* Words of eight letters and fewer go to the next line whole, where there are hyphens. */
    hyphenate-limit-chars: 9;
    accent-color: var(--accent);
  }

  h2,
  h3,
  p,
  ul,
  dl,
  dd,
  figure,
  fieldset,
  legend {
    margin: 0;
    padding: 0;
    border: 0;
    min-inline-size: 0;
  }

  ul {
    list-style: none;
  }

  /* A sentence reads in the direction of its own language, whatever that of the page. */
  h2,
  h3,
  p,
  li,
  summary {
    unicode-bidi: plaintext;
  }

  h3 {
    font: inherit;
    font-size: var(--small);
    font-weight: 600;
    color: var(--muted);
  }

  button,
  select,
  input {
    font: inherit;
    color: inherit;
    letter-spacing: inherit;
  }

  select,
  .typed,
  .entry {
    background: var(--ground);
    border: 1px solid var(--edge);
    border-radius: 6px;
    min-block-size: 36px;
  }

  select {
    padding-inline: 8px;
    text-overflow: ellipsis;
    /* WebKit else counts the text of a list that is wider than the list. */
    contain: paint;
    cursor: pointer;
  }

  button {
    cursor: pointer;
    border: 0;
    background: none;
    padding: 4px 8px;
    min-block-size: 32px;
    min-inline-size: 32px;
    border-radius: 6px;
  }

  button:hover:not([aria-disabled='true']) {
    background: var(--tint);
  }

  [aria-disabled='true'] {
    cursor: default;
    color: var(--muted);
  }

  .why-number {
    padding: 0 4px;
    margin: 0;
    text-decoration: underline dotted 1px;
    text-decoration-color: var(--muted);
    text-underline-offset: 0.25em;
  }

  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }

  .quiet,
  small {
    color: var(--muted);
  }

  small {
    font-size: min(var(--small), 1em);
  }

  .status {
    font-style: italic;
  }

  .panels {
    display: contents;
  }

  .around {
    display: flex;
    flex-wrap: wrap;
    gap: 0 16px;
    padding-inline: var(--gutter);
    align-items: center;
  }

  .around ::slotted(*) {
    margin-block: 12px;
  }

  [data-loading]:empty::before {
    content: attr(data-loading);
    display: block;
    padding: 16px;
    color: var(--muted);
  }

  .visually-hidden {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  [data-category='slow'] {
    --category: var(--slow);
  }
  [data-category='tempo'] {
    --category: var(--tempo);
  }
  [data-category='intervals'] {
    --category: var(--intervals);
  }
  [data-category='cross'] {
    --category: var(--cross);
  }
  [data-category='strength'] {
    --category: var(--strength);
  }
`;
