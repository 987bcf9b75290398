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

  .run-strip {
    display: flex;
    align-items: end;
    gap: 1px;
  }

  .run-strip span {
    flex: var(--minutes) 1 0;
    min-inline-size: 2px;
    border-radius: 2px;
    background: var(--category);
    print-color-adjust: exact;
  }

  .run-strip .easy {
    block-size: 10px;
    opacity: 0.55;
  }

  .run-strip .work {
    block-size: 28px;
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
