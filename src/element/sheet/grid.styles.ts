import { css } from 'lit';

/** The grid of quantities: numbers to the end, the difference from the reference small behind them. */
export const gridStyles = css`
  .grid {
    margin-block-start: 16px;
  }

  /* Each group is painted apart: a change in one leaves what was painted of the others. */
  .grid tbody {
    position: relative;
    isolation: isolate;
  }

  .grid tbody:has(.detail) {
    z-index: 2;
  }

  /* The heads stay in sight, and never over what has the focus. */
  .grid tbody :is(button, input, select, [tabindex]) {
    scroll-margin-block-start: 5em;
  }

  .grid thead th {
    position: sticky;
    inset-block-start: 0;
    z-index: 3;
    background: var(--ground);
    border-block-end: 1px solid var(--line);
    font-size: var(--small);
    color: var(--muted);
    text-align: end;
    overflow-wrap: anywhere;
  }

  .grid thead th:first-child {
    font-size: 1em;
  }

  .grid thead [data-role='on-show'] {
    color: var(--text);
    box-shadow: inset 0 -2px var(--accent);
  }

  .grid .group th {
    padding-block: 12px 0;
  }

  .grid .group button {
    padding-inline: 0 8px;
    font-size: var(--small);
    font-weight: 600;
    color: var(--muted);
  }

  .grid .group button::before {
    content: '';
    display: inline-block;
    inline-size: 0.4em;
    block-size: 0.4em;
    border: solid currentColor;
    border-width: 0 1.5px 1.5px 0;
    margin-inline: 2px 8px;
    rotate: -45deg;
    vertical-align: 0.1em;
  }

  .grid .group button:dir(rtl)::before {
    rotate: 135deg;
  }

  .grid .group button[aria-expanded='true']::before {
    rotate: 45deg;
    vertical-align: 0.25em;
  }

  .grid tbody tr:not(.group, .detail) > * {
    border-block-end: 1px solid var(--line);
    cursor: pointer;
    block-size: 32px;
  }

  .grid tbody th .swatch {
    margin-inline-end: 6px;
  }

  .grid td {
    text-align: end;
    position: relative;
  }

  .grid td > small {
    display: inline-block;
    min-inline-size: 3.2em;
    padding-inline-start: 6px;
    text-align: end;
  }

  .grid [aria-selected='true'] {
    background: var(--tint);
  }

  .grid td[aria-expanded='true'] {
    background: var(--tint);
    box-shadow: inset 0 0 0 2px var(--accent);
  }

  .grid td:focus-visible,
  .grid th:focus-visible {
    outline-offset: -2px;
  }

  .grid td[data-mark='by-hand'] {
    font-weight: 600;
    color: var(--accent);
  }

  .grid td[data-mark='by-hand']::before {
    content: '';
    position: absolute;
    inset-block-start: 0;
    inset-inline-start: 0;
    border: 5px solid transparent;
    border-block-start-color: var(--accent);
    border-inline-start-color: var(--accent);
  }

  .grid td[data-mark='gives-way'] {
    font-style: italic;
  }

  .grid td[data-mark='wrong'] {
    color: var(--alert);
  }

  .grid td[data-mark='off'] {
    color: var(--muted);
  }

  .grid .detail > td {
    padding: 8px 0 16px;
    text-align: start;
  }

  @media (forced-colors: active) {
    .grid [aria-selected='true'],
    .grid td[aria-expanded='true'] {
      outline: 2px solid Highlight;
      outline-offset: -2px;
    }
  }
`;
