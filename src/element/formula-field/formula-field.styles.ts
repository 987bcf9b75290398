import { css } from 'lit';

/** The formula field: the list lies over what follows, and the note keeps its room, so that nothing moves. */
export const formulaFieldStyles = css`
  .formula {
    position: relative;
    display: grid;
    /* Not wider than its place, however wide an engine makes a field. */
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
  }

  .formula label {
    font-weight: 600;
  }

  .formula input {
    flex: 1;
    min-inline-size: 0;
    min-block-size: 34px;
    padding-inline: 8px;
    border: 0;
    background: none;
  }

  .formula .entry button {
    min-inline-size: 34px;
    min-block-size: 34px;
    border-radius: 0;
  }

  .formula .entry svg {
    inline-size: 12px;
    fill: none;
    stroke: currentColor;
    stroke-width: 1.5;
  }

  .formula .entry:has([aria-invalid='true']) {
    border-color: var(--alert);
  }

  .formula [role='listbox'] {
    position: absolute;
    z-index: 2;
    inset-inline: 0;
    /* The label and the field above it. */
    inset-block-start: calc(1lh + 44px);
    max-block-size: 20em;
    overflow: auto;
    background: var(--ground);
    border: 1px solid var(--edge);
    border-radius: 6px;
    box-shadow: 0 4px 12px rgb(0 0 0 / 20%);
  }

  .formula [role='option'] {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    column-gap: 12px;
    padding: 6px 8px;
    min-block-size: 36px;
    overflow-wrap: anywhere;
    cursor: pointer;
  }

  .formula [role='option']:hover {
    background: var(--tint);
  }

  .formula [aria-selected='true'] {
    background: var(--tint);
    box-shadow: inset 0 0 0 2px var(--accent);
  }

  .formula-note {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    align-content: start;
    justify-content: space-between;
    column-gap: 12px;
    /* The text, two lines of a reason and the way out. */
    min-block-size: calc(2lh + 40px);
    overflow-wrap: anywhere;
  }

  @container planner (inline-size >= 36em) {
    .formula-note {
      min-block-size: calc(1lh + 26px);
    }
  }

  .formula-note .wrong,
  .formula-note button {
    font-size: var(--small);
  }

  .formula-note button {
    min-block-size: 26px;
    padding-block: 2px;
    border: 1px solid var(--edge);
    unicode-bidi: plaintext;
  }

  .formula-result {
    font-weight: 600;
  }

  .formula-echo {
    color: var(--muted);
    white-space: pre-wrap;
    text-align: start;
  }

  .formula mark {
    background: none;
    color: var(--alert);
    text-decoration: underline wavy 1.5px;
    text-underline-offset: 0.2em;
  }

  /* The text ends too soon: what is missing has a place all the same. */
  .formula mark:empty {
    padding-inline-end: 1.2em;
    border-block-end: 2px dashed;
  }

  @media (forced-colors: active) {
    .formula [aria-selected='true'] {
      outline: 2px solid Highlight;
      outline-offset: -2px;
    }
  }
`;
