import { css } from 'lit';

/** What stands under the numbers: why they are so, which rules acted, what is worth knowing, the usual cautions. */
export const reasonsStyles = css`
  .why {
    background: var(--tint);
    border-inline-start: 4px solid var(--accent);
    border-radius: 6px;
    padding: 8px 16px 16px;
  }

  .why[hidden] {
    display: none;
  }

  .why header {
    display: flex;
    justify-content: space-between;
    align-items: start;
    gap: 8px;
  }

  .why h3 {
    font-size: 1em;
    color: var(--text);
    margin-block: 4px;
  }

  .why dl {
    display: grid;
    gap: 8px;
    margin-block-start: 8px;
  }

  .why dl > div {
    display: grid;
    gap: 4px;
  }

  .why dt {
    font-size: var(--small);
    color: var(--muted);
  }

  .why dd {
    overflow-wrap: anywhere;
  }

  .why small {
    display: block;
  }

  .status,
  .why small.status {
    display: inline-block;
  }

  .why li.acted {
    border-inline-start: 2px solid var(--accent);
    padding-inline-start: 8px;
  }

  .notes {
    display: grid;
    gap: 16px;
    align-content: start;
    min-block-size: 5lh;
  }

  .notes li,
  .cautions li {
    padding-block: 4px;
  }

  .notes .caution {
    color: var(--alert);
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

  .cautions .more {
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  @container numbers (inline-size >= 24em) {
    .why dl > div {
      grid-template-columns: 6em 1fr;
    }
  }
`;
