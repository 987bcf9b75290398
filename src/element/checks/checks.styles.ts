import { css } from 'lit';

/** Checks. */
export const checksStyles = css`
  /* Labels over their fields: three of them in a row, whatever their length. */
  .checks .concrete-inputs {
    grid-template-columns: repeat(auto-fit, minmax(min(13em, 100%), 1fr));
    align-items: end;
  }

  .checks .concrete-inputs .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    justify-items: start;
  }

  .check-groups {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(24em, 100%), 1fr));
    gap: 16px 24px;
    align-items: start;
  }

  .check-group {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }

  .check {
    padding-inline-start: 12px;
    border-inline-start: 3px solid var(--line);
  }

  .check[data-level='look'] {
    border-inline-start: 3px dashed var(--text);
  }

  .check[data-level='caution'] {
    border-inline-start: 6px solid var(--alert);
    padding-inline-start: 9px;
  }

  .check > summary {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0 12px;
    padding-block: 4px;
    min-block-size: 40px;
    cursor: pointer;
    list-style: none;
  }

  .check > summary::-webkit-details-marker {
    display: none;
  }

  .check-name {
    font-weight: 600;
  }

  .check-name::before {
    content: '+ ' / '';
    color: var(--muted);
  }

  .check[open] .check-name::before {
    content: '− ' / '';
  }

  .check-level {
    color: var(--muted);
  }

  .check:is([data-level='look'], [data-level='caution']) .check-level {
    color: var(--text);
    font-weight: 600;
  }

  .check[data-level='caution'] .check-level {
    color: var(--alert);
  }

  .check-says {
    grid-column: 1 / -1;
  }

  .unknown {
    display: grid;
    gap: 8px;
    padding: 0;
    margin: 0;
    list-style: none;
  }

  .unknown small {
    display: block;
    color: var(--muted);
  }

  .check > :is(p, ul, h5) {
    margin-block: 4px;
  }

  .check h5,
  .answers legend {
    font: inherit;
    font-weight: 600;
    margin: 0;
  }

  .answers {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
    border: 0;
    padding: 0;
    margin: 0;
    min-inline-size: 0;
  }

  .answers legend {
    padding: 0 0 4px;
  }

  .answers label {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 8px;
    align-items: start;
    padding-block: 4px;
    cursor: pointer;
  }

  .answers input {
    inline-size: 20px;
    block-size: 20px;
    margin: 2px 0 0;
  }

  .advice {
    display: grid;
    gap: 8px;
    padding-inline-start: 12px;
    border-inline-start: 3px solid var(--line);
  }

  .advice:is(
    [data-advice='stop'],
    [data-advice='ask-first'],
    [data-advice='ask-before-hard'],
    [data-advice='stay-easy'],
    [data-mind]
  ) {
    border-inline-start: 6px solid var(--alert);
  }

  .advice p:first-child {
    font-weight: 600;
  }

  .checks-start details > summary {
    min-block-size: 32px;
    cursor: pointer;
  }

  .box .weeks {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
  }

  .weeks textarea.typed {
    inline-size: 100%;
    box-sizing: border-box;
    padding: 8px;
    font: inherit;
    font-variant-numeric: tabular-nums;
    text-align: start;
    resize: vertical;
  }

  .box .scroll td.how {
    white-space: normal;
    min-inline-size: 14em;
    color: var(--muted);
  }
`;
