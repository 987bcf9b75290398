import { css } from 'lit';

/** What stands under the days: tools, proposal, conflict, clashes, kinds. */
export const boxesStyles = css`
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

  .length {
    display: grid;
    grid-template-columns: max-content minmax(0, 24em);
    align-items: center;
    gap: 12px;
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
    .wishes {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(8.5em, 1fr));
    }

    .wish select {
      inline-size: 100%;
    }

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
`;
