import { css } from 'lit';

/** The season. */
export const seasonStyles = css`
  .season-panel {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px;
    padding: clamp(12px, 3cqi, 24px);
    border-block-start: 1px solid var(--line);
  }

  .season-panel .lead {
    font-size: var(--large);
  }

  .season-inputs,
  .season-fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(15em, 100%), 1fr));
    gap: 8px 24px;
    align-items: start;
  }

  .season-inputs {
    grid-template-columns: repeat(auto-fit, minmax(min(17em, 100%), 1fr));
  }

  .season-panel .field-name {
    font-weight: 600;
  }

  .season-panel .date {
    padding-inline: 8px;
    text-align: start;
  }

  .season-panel .hint:empty {
    display: none;
  }

  .season-notes {
    display: grid;
    gap: 8px;
  }

  .season-notes li {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 4px 8px;
    padding-inline-start: 12px;
    border-inline-start: 3px solid var(--line);
  }

  .season-notes li[data-level='caution'] {
    border-inline-start-color: var(--alert);
  }

  .season-notes li > span {
    flex: 1 1 20em;
  }

  .season-chart {
    display: grid;
    gap: 8px;
  }

  .season-chart .sweep-picture {
    grid-template-rows: auto auto 16em auto auto;
  }

  .season-week {
    display: grid;
    gap: 8px;
    padding: 12px;
    border-radius: 6px;
    background: var(--tint);
    justify-items: start;
  }

  .season-week > * {
    inline-size: 100%;
  }

  .season-week > .act {
    inline-size: auto;
    background: var(--ground);
  }

  .season-week h4,
  .season-box h4 {
    margin: 0;
    font: inherit;
    font-weight: 600;
  }

  .season-kinds {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 20px;
  }

  .season-kinds .kind-mark {
    display: inline-block;
    inline-size: 0.75em;
    block-size: 0.75em;
    margin-inline-end: 6px;
    border-radius: 2px;
    background: var(--category);
    print-color-adjust: exact;
  }

  .season-boxes {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }

  .season-box {
    border: 1px solid var(--line);
    border-radius: 6px;
    padding: 0 12px;
    background: var(--ground);
  }

  .season-box[open] {
    padding-block-end: 12px;
  }

  .season-box > summary {
    cursor: pointer;
    font-weight: 600;
    padding-block: 8px;
    min-block-size: 40px;
  }

  .season-box > * + * {
    margin-block-start: 8px;
  }

  .season-phases,
  .season-events {
    display: grid;
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
    max-inline-size: 24em;
  }

  .phase-acts button {
    border: 1px solid var(--edge);
  }

  .season-panel .scroll {
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
  }

  @media (forced-colors: active) {
    .season-kinds .kind-mark {
      border: 1px solid CanvasText;
    }
  }
`;
