import { css } from 'lit';

/** One column on a phone; from 44em two: picture and inputs, numbers and reasons. The answer stands over both. */
export const splitStyles = css`
  .split {
    display: grid;
    gap: 24px;
    padding: 20px 16px;
  }

  .answer {
    font: inherit;
    font-size: var(--huge);
    line-height: 1.25;
    letter-spacing: -0.01em;
    text-wrap: balance;
    /* Two to three lines are kept free on a phone, so that nothing below moves when the sentence grows by one. */
    min-block-size: 3lh;
  }

  .answer strong {
    font-weight: 700;
    white-space: nowrap;
  }

  .right {
    container: numbers / inline-size;
  }

  .left,
  .numbers {
    display: grid;
    gap: 20px;
    align-content: start;
    min-inline-size: 0;
  }

  .week {
    border-collapse: collapse;
    table-layout: fixed;
    inline-size: 100%;
  }

  .week th,
  .week td {
    padding: 4px;
    block-size: 44px;
    text-align: end;
    font-weight: 400;
    border-block-end: 1px solid var(--line);
  }

  .week thead th {
    block-size: 28px;
    font-size: var(--small);
    color: var(--muted);
    vertical-align: bottom;
  }

  .week .kind {
    text-align: start;
    padding-inline: 0;
    overflow-wrap: break-word;
    hyphens: auto;
  }

  .kind > span {
    display: grid;
    grid-template-columns: auto 1fr;
    align-items: center;
    gap: 8px;
  }

  .week tbody .kind {
    font-weight: 600;
  }

  .week .share {
    display: none;
    color: var(--muted);
  }

  .week .exact {
    inline-size: 15%;
    color: var(--muted);
  }

  .week .planned {
    inline-size: 18%;
  }

  .week .sessions {
    inline-size: 35%;
    padding-inline-end: 0;
  }

  .week td.planned {
    font-size: var(--large);
    font-weight: 600;
  }

  .week select {
    padding-inline: 6px 0;
    inline-size: 100%;
    min-inline-size: 0;
  }

  .week tfoot th,
  .week tfoot td {
    border: 0;
    color: var(--muted);
  }

  .week tfoot td.planned {
    color: var(--text);
  }

  .basis {
    font-size: var(--small);
    color: var(--muted);
  }

  .week .empty {
    color: var(--muted);
  }

  .swatch {
    display: inline-block;
    inline-size: 12px;
    block-size: 12px;
    border-radius: 3px;
    background: var(--category);
    forced-color-adjust: none;
  }

  .why {
    background: var(--tint);
    border-inline-start: 4px solid var(--accent);
    border-radius: 6px;
    padding: 8px 16px 16px;
  }

  .why[hidden] {
    display: none;
  }

  .why header {
    display: flex;
    justify-content: space-between;
    align-items: start;
    gap: 8px;
  }

  .why h3 {
    font-size: 1em;
    color: var(--text);
    margin-block: 4px;
  }

  .why dl {
    display: grid;
    gap: 8px;
    margin-block-start: 8px;
  }

  .why dl > div {
    display: grid;
    gap: 4px;
  }

  .why dt {
    font-size: var(--small);
    color: var(--muted);
  }

  .why dd {
    overflow-wrap: anywhere;
  }

  .why small {
    display: block;
  }

  .status,
  .why small.status {
    display: inline-block;
  }

  .why li.acted {
    border-inline-start: 2px solid var(--accent);
    padding-inline-start: 8px;
  }

  .notes {
    display: grid;
    gap: 16px;
    align-content: start;
    min-block-size: 5lh;
  }

  .notes li,
  .cautions li {
    padding-block: 4px;
  }

  .notes .caution {
    color: var(--alert);
  }

  .cautions {
    border-block-start: 1px solid var(--line);
    padding-block-start: 12px;
    font-size: var(--small);
    color: var(--muted);
  }

  .cautions summary {
    cursor: pointer;
    min-block-size: 24px;
  }

  .cautions .more {
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  @container numbers (inline-size >= 27em) {
    .week .share {
      display: table-cell;
      inline-size: 13%;
    }
    .week .exact {
      inline-size: 13%;
    }
    .week .planned {
      inline-size: 16%;
    }
    .week .sessions {
      inline-size: 28%;
    }
  }

  @container planner (inline-size >= 30em) {
    .answer {
      min-block-size: 2lh;
    }
  }

  @container planner (inline-size >= 40em) {
    .split {
      grid-template-columns: minmax(0, 5fr) minmax(0, 7fr);
      column-gap: clamp(24px, 4cqi, 48px);
      padding: 28px clamp(20px, 3cqi, 36px);
    }
    .answer {
      grid-column: 1 / -1;
      min-block-size: 2lh;
    }
    .why dl > div {
      grid-template-columns: 6em 1fr;
    }
  }

  @container planner (inline-size >= 62em) {
    .answer {
      min-block-size: 1lh;
    }
  }

  @media (forced-colors: active) {
    .swatch {
      background: CanvasText;
    }
  }
`;
