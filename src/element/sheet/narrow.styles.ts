import { css } from 'lit';

/** The sheet on paper, and where there is no room for many columns; comes after the styles that it overrules. */
export const narrowStyles = css`
  @media print {
    .sheet :is(.toolbar, .chooser, .menu, .act, .questions, .message) {
      display: none;
    }
    .columns-box {
      overflow: visible;
    }
  }

  /* One scenario at a time, with the one it is compared with beside it. */
  @container planner (inline-size < 40em) {
    .columns-box .columns {
      min-inline-size: 0;
    }
    .inputs-table :is([data-role='other'], [data-role='beside']) {
      display: none;
    }
    /* Still there, but without width: rows that span all columns count them. */
    .grid [data-role='other'] {
      visibility: hidden;
      inline-size: 0;
      padding: 0;
      font-size: 0;
    }
    .columns [data-role='beside'] {
      color: var(--muted);
    }
    .name input[type='radio'] {
      display: none;
    }
    .reference {
      padding-inline-start: 8px;
    }
    .chooser {
      display: flex;
      flex-wrap: wrap;
      gap: 4px 8px;
    }
    .chooser label {
      display: flex;
      align-items: center;
      gap: 6px;
      min-block-size: 36px;
      border: 1px solid var(--edge);
      border-radius: 6px;
      padding-inline: 8px;
    }
    .chooser label:has(:checked) {
      background: var(--tint);
      border-color: var(--accent);
    }
    /* A name takes two lines with some inputs: their room is kept. */
    .grid thead th {
      block-size: calc(2lh + 8px);
    }
    .grid td {
      overflow-wrap: anywhere;
    }
    .grid td > small {
      min-inline-size: 2.6em;
      padding-inline-start: 2px;
    }
    .columns th:first-child {
      inline-size: 6.5em;
      overflow-wrap: anywhere;
    }
    .columns th,
    .columns td {
      padding-inline: 4px;
    }
  }
`;
