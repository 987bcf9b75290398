import { css } from 'lit';

/** The board: days side by side where there is room, else one under the other. */
export const boardStyles = css`
  .board {
    border-block-start: 1px solid var(--line);
    padding: 24px 16px;
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px;
  }

  .board h4 {
    margin: 0;
    font: inherit;
    font-weight: 600;
    unicode-bidi: plaintext;
  }

  .verdict {
    font-size: var(--large);
  }

  .verdict[data-state='nothing-fits'] {
    color: var(--alert);
  }

  .wishes,
  .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
  }

  .wishes {
    gap: 8px 16px;
  }

  .wish {
    display: grid;
    gap: 4px;
    min-inline-size: 0;
  }

  .wish label {
    font-size: var(--small);
    color: var(--muted);
  }

  .board .act {
    border: 1px solid var(--edge);
    padding-inline: 12px;
    min-block-size: 36px;
    text-align: start;
  }

  .board .act[aria-pressed='true'] {
    background: var(--tint);
    border-color: var(--accent);
  }

  .keys {
    font-size: var(--small);
  }

  .days {
    list-style: none;
    margin: 0;
    padding: 0;
    display: grid;
    gap: 1px;
  }

  .days[data-state='looking'] .cards {
    opacity: 0.5;
  }

  .day {
    display: grid;
    grid-template-columns: 6.5em minmax(0, 1fr);
    grid-template-areas: 'name cards' 'minutes cards' 'total cards' 'carried carried';
    gap: 4px 12px;
    align-content: start;
    padding: 8px;
    border-block-end: 1px solid var(--line);
    border-radius: 6px;
    min-inline-size: 0;
  }

  .day h4 {
    grid-area: name;
  }

  .day h4 button {
    font-weight: 600;
    padding-inline: 4px;
    max-inline-size: 100%;
  }

  .day .short {
    display: none;
  }

  .day .minutes {
    grid-area: minutes;
    display: grid;
    gap: 4px;
    min-inline-size: 0;
  }

  .day .minutes .entry {
    display: flex;
    align-items: center;
    inline-size: fit-content;
    max-inline-size: 100%;
    min-block-size: 32px;
  }

  .day .minutes .typed {
    border: 0;
    min-block-size: 30px;
    inline-size: 3.2em;
    min-inline-size: 0;
    padding-inline: 8px 0;
    background: none;
  }

  .day .unit {
    padding-inline: 4px 8px;
    font-size: var(--small);
    color: var(--muted);
  }

  .day .minutes input[type='range'] {
    inline-size: 100%;
    min-inline-size: 0;
    min-block-size: 24px;
    margin: 0;
  }

  .day .total {
    grid-area: total;
    font-size: var(--small);
    padding-inline: 4px;
  }

  .day .carried {
    grid-area: carried;
    font-weight: 600;
    padding: 4px 8px;
    border: 1px dashed var(--accent);
    border-radius: 6px;
  }

  .day .wrong:empty {
    display: none;
  }

  .day[data-free='true'] {
    background: repeating-linear-gradient(
      135deg,
      transparent 0 6px,
      color-mix(in oklab, var(--line) 45%, transparent) 6px 7px
    );
  }

  .day[data-passed='true'] h4 {
    color: var(--muted);
  }

  .day[data-over='true'] {
    background: var(--tint);
    outline: 2px solid var(--accent);
    outline-offset: -2px;
  }

  .tools,
  .proposal,
  .conflict {
    display: grid;
    gap: 8px;
    background: var(--tint);
    border-radius: 6px;
    padding: 12px;
    min-inline-size: 0;
  }

  .tools[hidden] {
    display: none;
  }

  .tools .close {
    justify-self: end;
  }

  .proposal table {
    border-collapse: collapse;
    table-layout: fixed;
    inline-size: 100%;
    font-size: var(--small);
  }

  .proposal :is(td, th) {
    text-align: start;
    vertical-align: top;
    padding: 4px;
    border-block-start: 1px solid var(--line);
    overflow-wrap: anywhere;
    font-weight: 400;
  }

  .in-short {
    display: block;
    border-inline-start: 3px solid var(--category);
    padding-inline-start: 4px;
    margin-block-end: 4px;
  }

  mark {
    background: none;
    color: inherit;
    font-weight: 700;
    text-decoration: underline;
  }

  .conflict ul {
    list-style: disc;
    padding-inline-start: 20px;
  }

  .clashes summary {
    cursor: pointer;
    padding-block: 4px;
    min-block-size: 24px;
  }

  .clashes summary b {
    display: inline-block;
    min-inline-size: 1.5em;
  }

  .clashes details > p {
    padding-inline-start: 2.5em;
  }

  .kinds {
    border-collapse: collapse;
    inline-size: 100%;
  }

  .kinds :is(td, th) {
    text-align: start;
    padding: 4px;
    border-block-start: 1px solid var(--line);
    font-weight: 400;
  }

  .kinds thead th {
    border: 0;
    font-size: var(--small);
    color: var(--muted);
  }

  .kinds .acts {
    gap: 4px;
  }

  .kinds .swatch {
    display: inline-block;
    inline-size: 12px;
    block-size: 12px;
    border-radius: 3px;
    background: var(--category);
    margin-inline-end: 8px;
  }

  @container planner (inline-size < 560px) {
    .kinds,
    .kinds :is(tbody, tr) {
      display: block;
    }

    .kinds thead {
      display: none;
    }

    .kinds tr {
      display: flex;
      flex-wrap: wrap;
      align-items: baseline;
      gap: 0 12px;
      border-block-start: 1px solid var(--line);
      padding-block: 4px;
    }

    .kinds :is(td, th) {
      border: 0;
    }

    .kinds th {
      flex-basis: 100%;
    }

    .proposal .in-short {
      hyphens: auto;
    }
  }

  @container planner (inline-size >= 760px) {
    .days {
      grid-template-columns: repeat(7, minmax(0, 1fr));
      gap: 4px;
    }

    .day {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: auto auto 1fr auto auto;
      grid-template-areas: 'name' 'minutes' 'cards' 'carried' 'total';
      border: 1px solid var(--line);
      padding: 4px;
      min-block-size: 18em;
    }

    .day .long {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }

    .day .short {
      display: inline;
    }
  }

  @media (forced-colors: active) {
    .day[data-over='true'] {
      outline-color: Highlight;
    }
  }

  @media print {
    .wishes,
    .keys,
    .tools,
    .proposal,
    .day .minutes,
    .kinds .acts {
      display: none;
    }
  }
`;
