import { css } from 'lit';

/** What is in the boxes of the season. */
export const seasonBoxesStyles = css`
  .season-fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(15em, 100%), 1fr));
    gap: 8px 24px;
    align-items: start;
  }

  .season-box > * + * {
    margin-block-start: 8px;
  }

  .season-panel .field-name {
    font-weight: 600;
  }

  .season-phases,
  .season-events {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .season-phases li,
  .season-events li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px;
  }

  /* A date with spaced letters is wide in WebKit. */
  .season-events :is(.field, select) {
    min-inline-size: 0;
    max-inline-size: 100%;
  }

  .season-phases select {
    flex: 1 1 8em;
    max-inline-size: 16em;
  }

  .season-phases li + li,
  .season-events li + li {
    border-block-start: 1px solid var(--line);
    padding-block-start: 8px;
  }

  /* The names of quantities are long. */
  .season-fields .wide {
    grid-column: 1 / -1;
  }

  .season-fields .wide > select {
    max-inline-size: min(24em, 100%);
  }

  .phase-acts button {
    border: 1px solid var(--edge);
  }

  .season-panel .scroll {
    /* The heads stay in sight, and never over what has the focus. */
    scroll-padding-block-start: 4em;
    overflow: auto;
    max-block-size: 32em;
  }

  .season-panel table {
    border-collapse: collapse;
    inline-size: 100%;
    font-size: var(--small);
  }

  .season-panel :is(td, th) {
    padding: 2px 8px;
    text-align: end;
    font-weight: 400;
    white-space: nowrap;
    border-block-end: 1px solid var(--line);
  }

  .season-panel thead th {
    color: var(--muted);
    white-space: normal;
    vertical-align: bottom;
    position: sticky;
    inset-block-start: 0;
    background: var(--ground);
  }

  .season-table :is(td, th):nth-child(3),
  .season-summary th[scope='row'] {
    text-align: start;
  }

  .season-table tr[data-read] > * {
    background: var(--tint);
    font-weight: 600;
  }

  .season-table tbody button {
    text-decoration: underline dotted 1px;
    text-underline-offset: 0.25em;
  }

  .season-panel .answer {
    font-size: var(--large);
    min-block-size: 2lh;
  }

  .season-basis ul {
    padding-inline-start: 16px;
    overflow-wrap: anywhere;
  }
`;
