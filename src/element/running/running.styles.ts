import { css } from 'lit';

/** Paces and runs. */
export const runningStyles = css`
  .guides {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(13em, 100%), 1fr));
    gap: 12px 24px;
  }

  .guides li {
    display: grid;
    gap: 2px;
    align-content: start;
    padding-block-start: 8px;
    border-block-start: 3px solid var(--category);
  }

  .guides .pace {
    font-size: var(--large);
  }

  .runs > ul {
    display: grid;
    gap: 12px;
    grid-template-columns: repeat(auto-fill, minmax(min(22em, 100%), 1fr));
  }

  .runs li {
    display: grid;
    gap: 4px;
    align-content: start;
    padding: 12px;
    border-radius: 6px;
    border-inline-start: 4px solid var(--category);
    background: var(--tint);
  }

  .run-head {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    align-items: baseline;
  }

  /* Beads on a string: what is hard is a bead as long as its minutes, what is easy the string. */
  .run-strip {
    display: flex;
    align-items: center;
    min-block-size: 16px;
  }

  .run-strip span {
    flex: var(--minutes) 1 0;
    min-inline-size: 2px;
    background: var(--category);
    print-color-adjust: exact;
  }

  .run-strip .easy {
    block-size: 4px;
  }

  .run-strip .work {
    block-size: 16px;
    border-radius: 8px;
  }

  .bands td {
    white-space: nowrap;
  }

  .running sup {
    line-height: 0;
  }

  @media (forced-colors: active) {
    .run-strip span {
      background: CanvasText;
    }
  }
`;
