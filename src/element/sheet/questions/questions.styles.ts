import { css } from 'lit';

/** What can be asked of the sheet. */
export const questionsStyles = css`
  .questions {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }

  .question {
    border: 1px solid var(--line);
    border-radius: 6px;
    padding: 0 12px;
  }

  .question[open] {
    padding-block-end: 16px;
  }

  .question > summary {
    cursor: pointer;
    font-weight: 600;
    padding-block: 8px;
    min-block-size: 40px;
  }

  .question-fields {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    margin-block: 4px 8px;
  }

  .question-fields select {
    max-inline-size: 100%;
  }

  .answer-box {
    min-block-size: 5lh;
  }

  .lead {
    font-size: var(--large);
  }

  .reading-line {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 4px 16px;
    min-block-size: 3lh;
  }

  .turning-points {
    margin: 0;
    padding-inline-start: 1.5em;
  }

  .sweep-table {
    margin-block-start: 8px;
  }

  .sweep-table summary {
    cursor: pointer;
    min-block-size: 24px;
  }

  .sweep-table .scroll {
    max-block-size: 24em;
    overflow: auto;
  }

  .values,
  .influence {
    border-collapse: collapse;
    inline-size: 100%;
  }

  .influence {
    overflow-wrap: anywhere;
    hyphens: auto;
  }

  .values th,
  .values td,
  .influence th,
  .influence td {
    padding: 4px 8px;
    text-align: end;
    font-weight: 400;
    border-block-end: 1px solid var(--line);
  }

  .values thead th,
  .influence thead th {
    font-size: var(--small);
    color: var(--muted);
  }

  .influence thead th {
    text-align: start;
  }

  .values th:first-child,
  .influence th:first-child {
    text-align: start;
  }

  .influence td {
    inline-size: 34%;
    text-align: start;
  }

  .bar {
    display: block;
    position: relative;
    min-block-size: 24px;
  }

  .bar::before {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline-start: 0;
    inline-size: var(--size);
    background: color-mix(in oklab, var(--accent) 30%, var(--ground));
    border-inline-end: 2px solid var(--accent);
  }

  .bar[data-sign='less']::before {
    background: repeating-linear-gradient(
      135deg,
      color-mix(in oklab, var(--accent) 30%, var(--ground)) 0 4px,
      var(--ground) 4px 7px
    );
  }

  .bar span {
    position: relative;
    padding-inline: 6px;
  }

  @media (forced-colors: active) {
    .bar::before {
      background: Highlight;
      forced-color-adjust: none;
    }
  }
`;
