import { css } from 'lit';

/** The season. */
export const seasonStyles = css`
  .season-inputs {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(17em, 100%), 1fr));
    gap: 8px 24px;
    align-items: start;
  }

  .season-panel .date {
    padding-inline: 8px;
    min-inline-size: 0;
    max-inline-size: 100%;
  }

  .season-panel .hint:empty {
    display: none;
  }

  .season-notes,
  .season-chart,
  .season-boxes {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
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
    flex: 1 20em;
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
  }

  .season-week > .act {
    justify-self: start;
    background: var(--ground);
  }

  .season-panel h4 {
    margin: 0;
    font: inherit;
    font-weight: 600;
  }

  .season-kinds {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 20px;
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
`;
