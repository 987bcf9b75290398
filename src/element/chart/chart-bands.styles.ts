import { css } from 'lit';

/** Named stretches over a chart, and lines with a name across it. */
export const chartBandsStyles = css`
  .sweep-bands {
    grid-area: 2 / 2;
    position: relative;
    block-size: 1.7em;
  }

  .sweep-bands span {
    position: absolute;
    left: var(--x);
    inline-size: var(--size);
    padding-inline: 4px;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
    border-inline-start: 1px dashed var(--edge);
    color: var(--muted);
  }

  .sweep-flag {
    position: absolute;
    top: calc(2px + var(--row) * 1.8em);
    left: var(--x);
    padding: 1px 4px;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
    background: var(--ground);
    border: 1px solid var(--edge);
    border-radius: 4px;
    font-weight: 600;
    pointer-events: none;
  }

  .sweep-flag.before {
    max-inline-size: calc(var(--x) - 4px);
    translate: calc(-100% - 4px) 0;
  }

  .sweep-flag.after {
    max-inline-size: calc(100% - var(--x) - 4px);
    translate: 4px 0;
  }

  .sweep .sweep-flagged {
    stroke: var(--text);
    stroke-width: 2px;
  }

  @media (forced-colors: active) {
    .sweep .sweep-flagged {
      stroke: CanvasText;
    }
  }
`;
