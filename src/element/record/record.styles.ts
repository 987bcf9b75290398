import { css } from 'lit';

/** What was done. */
export const recordStyles = css`
  .record-sessions {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
  }

  .record-sessions > li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 4px 16px;
    padding: 4px 12px;
    border-inline-start: 4px solid var(--category);
    border-block-end: 1px solid var(--line);
  }

  .record-sessions > li[data-done] {
    background: var(--tint);
  }

  .record-what {
    display: flex;
    align-items: center;
    gap: 12px;
    min-block-size: 36px;
    flex: 1 1 14em;
  }

  label.record-what {
    cursor: pointer;
  }

  .record-what input {
    inline-size: 20px;
    block-size: 20px;
    margin: 0;
    flex: none;
  }

  .record-fields {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
  }

  .record-fields .field {
    justify-content: start;
    row-gap: 4px;
  }

  .record-fields .hint {
    min-block-size: 0;
  }

  .record-fields .hint:empty,
  .record-add .hint:empty {
    display: none;
  }

  .record-fields label {
    color: var(--muted);
    font-size: var(--small);
  }

  .record-fields .text,
  .record-add .text {
    inline-size: 4em;
    padding-inline: 8px;
    text-align: start;
  }

  .record-fields select,
  .record-add select {
    inline-size: auto;
    max-inline-size: 100%;
  }

  .record-add {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: end;
  }

  .record-add label {
    display: grid;
    gap: 4px;
    color: var(--muted);
    font-size: var(--small);
    min-inline-size: 0;
  }

  .record-add :is(select, input) {
    font-size: 1rem;
    color: var(--text);
  }

  .record-add .hint {
    flex: 1 0 100%;
    min-block-size: 0;
  }

  .record-kinds {
    border-collapse: collapse;
  }

  .record-kinds :is(th, td) {
    padding: 4px clamp(4px, 2cqi, 24px) 4px 0;
    text-align: start;
    font-weight: 400;
    border-block-end: 1px solid var(--line);
  }

  .record-kinds thead th {
    color: var(--muted);
    font-size: var(--small);
  }

  .record .scroll {
    overflow: auto;
  }

  .record-rest {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
  }

  .record-rest .hint {
    min-block-size: 0;
  }

  .import-mapping {
    display: grid;
    gap: 8px;
  }

  .import-mapping legend {
    font-weight: 600;
  }

  .import-select {
    display: grid;
    gap: 2px;
    justify-items: start;
    overflow-wrap: anywhere;
  }

  .import-select select {
    inline-size: 100%;
  }

  .import-unread,
  .import-read {
    max-block-size: 16em;
    overflow: auto;
  }

  .import-unread {
    border-inline-start: 3px solid var(--alert);
    padding-inline-start: 12px;
    overflow-wrap: anywhere;
  }

  @media print {
    .record :is(.toolbar, .record-add, .record-rest, .boxes) {
      display: none;
    }
  }
`;
