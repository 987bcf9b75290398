import { css } from 'lit';

/** The sheets of a season: bars, phases, every week. */
export const seasonSheetStyles = css`
  .paper .p-weeks :is(th, td) {
    padding: 0.14em 0.5em 0.14em 0;
    font-size: 0.9em;
  }

  .paper .p-weeks :is(.p-number) {
    text-align: end;
    white-space: nowrap;
  }

  .paper .p-weeks tr[data-event] :is(th, td) {
    font-weight: 700;
  }

  .paper .p-date {
    white-space: nowrap;
  }

  .paper .p-bars {
    display: block;
    inline-size: 100%;
    block-size: auto;
  }

  .paper .p-bars rect {
    fill: #4a4a4a;
  }

  .paper .p-bars rect[data-light] {
    fill: #b4b4b4;
  }

  .paper .p-bars line {
    stroke: var(--ink);
    stroke-width: 0.4;
  }

  .paper .p-phases {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(15em, 100%), 1fr));
    gap: 0.2em 1.5em;
  }
`;
