import { css } from 'lit';

/** Derivations and problems; fetched with what shows them. */
export const detailsStyles = css`
  .why-number[aria-expanded='true'] {
    background: var(--tint);
    text-decoration-style: solid;
    text-decoration-color: var(--accent);
  }

  .wrong {
    color: var(--alert);
  }

  .notes li,
  .cautions li {
    padding-block: 4px;
  }

  .notes .caution {
    color: var(--alert);
  }

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

  .why header button {
    flex-shrink: 0;
  }

  .why h3 {
    min-inline-size: 0;
    overflow-wrap: anywhere;
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

  .why small.status {
    display: inline-block;
  }

  .why li.acted {
    border-inline-start: 2px solid var(--accent);
    padding-inline-start: 8px;
  }

  @container planner (25.6em <= inline-size < 40em) or (inline-size >= 46em) {
    .why dl > div {
      grid-template-columns: 6em 1fr;
    }
  }

  .plain {
    color: var(--accent);
    font-size: var(--small);
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  .problems {
    margin: 16px var(--gutter) 0;
    padding: 12px 16px;
    border: 1px solid var(--alert);
    border-inline-start-width: 4px;
    border-radius: 6px;
  }

  .problems h3 {
    color: var(--alert);
  }

  .problems ul {
    overflow-wrap: anywhere;
  }

  @media (forced-colors: active) {
    .why-number[aria-expanded='true'] {
      outline: 2px solid Highlight;
    }
  }
`;
