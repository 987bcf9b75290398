import { css } from 'lit';

/** The board: days side by side where there is room, else one under the other. */
export const boardStyles = css`
  .board h4 {
    margin: 0;
    font: inherit;
    font-weight: 600;
    unicode-bidi: plaintext;
  }

  /* "45 min" reads in its own direction, whatever that of the page. */
  .board :is(strong, small, td, th, label, .kind, .unit, .carried) {
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

  .wish select {
    max-inline-size: 100%;
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
    background: color-mix(in oklab, var(--line) 25%, var(--ground));
  }

  .day[data-passed='true'] h4 {
    color: var(--muted);
  }

  .day[data-over='true'] {
    background: var(--tint);
    outline: 2px solid var(--accent);
    outline-offset: -2px;
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
    .grip,
    .kinds :is(td, th):last-child {
      display: none;
    }

    .day {
      min-block-size: 0;
    }
  }
`;
