import { css } from 'lit';

/** What stands under the numbers: which rules acted, what is worth knowing, the usual cautions. */
export const reasonsStyles = css`
  .status {
    display: inline-block;
  }

  .notes {
    display: grid;
    gap: 16px;
    align-content: start;
    min-block-size: 5lh;
  }

  .cautions {
    border-block-start: 1px solid var(--line);
    padding-block-start: 12px;
    font-size: var(--small);
    color: var(--muted);
  }

  .cautions summary {
    cursor: pointer;
    min-block-size: 24px;
  }

  .panels > .cautions {
    padding: 12px var(--gutter);
  }

  .cautions .more {
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
`;
