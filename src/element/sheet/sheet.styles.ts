import { css } from 'lit';

/** The what-if sheet: columns of equal width, the first for names, inputs over quantities. */
export const sheetStyles = css`
  /* "+40" and "7 h, base" read in their own direction, whatever that of the page. */
  .sheet :is(small, b, h4, h5),
  .grid :is(td, thead th),
  .name .typed::placeholder {
    unicode-bidi: plaintext;
  }

  .sheet > .act {
    justify-self: start;
  }

  .scroll {
    overflow-x: auto;
  }

  .columns {
    table-layout: fixed;
    border-collapse: collapse;
    inline-size: 100%;
  }

  .columns th,
  .columns td {
    padding: 4px 8px;
    text-align: start;
    font-weight: 400;
    vertical-align: top;
  }

  .columns th:first-child {
    inline-size: 11em;
    padding-inline-start: 0;
  }

  .columns-box:is([data-scenarios='4'], [data-scenarios='5'], [data-scenarios='6']) {
    overflow-x: auto;
  }

  .columns-box[data-scenarios='4'] .columns {
    min-inline-size: 45em;
  }
  .columns-box[data-scenarios='5'] .columns {
    min-inline-size: 52em;
  }
  .columns-box[data-scenarios='6'] .columns {
    min-inline-size: 60em;
  }

  .inputs-table tbody th {
    padding-block-start: 10px;
  }

  .inputs-table thead th {
    border-block-end: 1px solid var(--line);
  }

  .inputs-table td {
    isolation: isolate;
  }

  .inputs-table [data-role='on-show'] {
    background: var(--tint);
  }

  .inputs-table thead [data-role='on-show'] {
    border-block-end: 2px solid var(--accent);
  }

  .name {
    display: flex;
    align-items: center;
    gap: 4px;
  }

  .name input[type='radio'] {
    flex: none;
    inline-size: 24px;
    block-size: 24px;
    margin: 0;
  }

  .name .typed {
    flex: 1;
    min-inline-size: 0;
    padding-inline: 6px;
    font-weight: 600;
    border-color: transparent;
    background: none;
  }

  .name .typed::placeholder {
    color: var(--text);
    opacity: 1;
  }

  .name .typed:hover,
  .name .typed:focus {
    border-color: var(--edge);
  }

  .columns-box:is([data-scenarios='4'], [data-scenarios='5'], [data-scenarios='6']) .name {
    flex-wrap: wrap;
    justify-content: space-between;
  }

  .columns-box:is([data-scenarios='4'], [data-scenarios='5'], [data-scenarios='6']) .name .typed {
    order: 1;
    flex: 1 0 100%;
  }

  .columns-box:is([data-scenarios='4'], [data-scenarios='5'], [data-scenarios='6']) .reference {
    padding-inline-start: 8px;
  }

  .chooser {
    display: none;
  }

  .reference {
    display: block;
    min-block-size: 1lh;
    padding-inline-start: 34px;
  }

  .menu {
    position: relative;
    flex: none;
  }

  .menu summary {
    list-style: none;
    cursor: pointer;
    inline-size: 32px;
    block-size: 32px;
    display: grid;
    place-items: center;
    border-radius: 6px;
  }

  .menu summary::before {
    content: '⋯';
  }

  .menu summary::-webkit-details-marker {
    display: none;
  }

  .menu summary:hover {
    background: var(--tint);
  }

  .menu .items {
    position: absolute;
    inset-inline-end: 0;
    z-index: 4;
    display: grid;
    min-inline-size: 13em;
    background: var(--ground);
    border: 1px solid var(--edge);
    border-radius: 6px;
    padding: 4px;
  }

  .menu .items button {
    text-align: start;
  }

  .inputs-table .entry .typed {
    flex: 1;
    inline-size: 3em;
  }

  .inputs-table td > select {
    inline-size: 100%;
    min-inline-size: 0;
  }

  .inputs-table td > .wrong:empty {
    display: none;
  }

  .inputs-table td > .wrong {
    font-size: var(--small);
    overflow-wrap: anywhere;
  }

  .hands li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 4px 12px;
    padding-block: 4px;
  }

  .failures {
    padding-block: 8px;
  }

  .draft {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 8px;
    margin-block: 8px;
  }

  .draft .formula {
    flex: 1 1 20em;
    min-inline-size: 0;
  }

  .draft > .act {
    align-self: start;
    margin-block-start: calc(1lh + 4px);
    background: var(--ground);
  }

  .sheet :is(h4, h5) {
    margin: 0;
    font: inherit;
    font-weight: 600;
  }

  .question-field {
    display: inline-grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
    max-inline-size: 100%;
  }

  .question-field label {
    font-size: var(--small);
    color: var(--muted);
  }

  .question-field .typed {
    padding-inline: 8px;
    max-inline-size: 100%;
  }
`;
