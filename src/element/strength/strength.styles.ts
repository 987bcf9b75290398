import { css } from 'lit';

/** Strength sessions. */
export const strengthStyles = css`
  .equipment {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 16px;
    align-items: center;
  }

  .equipment legend {
    font-weight: 600;
    padding-block-end: 4px;
  }

  .equipment label {
    display: inline-flex;
    align-items: center;
    gap: 6px;
    min-block-size: 32px;
    cursor: pointer;
  }

  .equipment input {
    inline-size: 20px;
    block-size: 20px;
    margin: 0;
  }

  .strength-sessions {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(22em, 100%), 1fr));
    gap: 16px;
    align-items: start;
  }

  .strength-session {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    padding: 12px;
    border-radius: 6px;
    border-block-start: 3px solid var(--category);
    background: var(--tint);
  }

  .strength-session > header {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    align-items: baseline;
  }

  .strength-session ol {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .strength-session li {
    padding: 4px 8px;
    border-radius: 6px;
    background: var(--ground);
  }

  .strength-session li.easy {
    background: none;
  }

  .in-turn {
    border-inline-start: 3px double var(--edge);
  }

  .exercise > summary {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    align-items: baseline;
    position: relative;
    padding-block: 4px;
    padding-inline-start: 16px;
    min-block-size: 32px;
    cursor: pointer;
  }

  .exercise > summary::before {
    content: '+';
    color: var(--accent);
    position: absolute;
    inset-inline-start: 0;
  }

  .exercise[open] > summary::before {
    content: '−';
  }

  .exercise .sets {
    font-weight: 600;
  }

  .exercise summary .quiet {
    flex-basis: 100%;
    font-size: var(--small);
  }

  .exercise > :not(summary) {
    margin-block: 4px;
    margin-inline-start: 16px;
  }

  .exercise .mind {
    padding-inline-start: 12px;
    border-inline-start: 3px solid var(--alert);
  }

  /* The names of movements are long. */
  .exercise .field {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
  }

  .exercise .field > select {
    max-inline-size: min(24em, 100%);
  }

  .rest {
    font-size: var(--small);
    padding-inline-start: 16px;
  }

  .lifted {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 12px;
  }

  .lifted legend {
    font-weight: 600;
    padding-block-end: 4px;
  }

  .lifted .field label {
    font-weight: 400;
  }
`;
