import { css } from 'lit';

/** What a runner takes home. */
export const handoutStyles = css`
  .handout .main {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--ground);
    font-weight: 600;
  }

  .handout .main:hover {
    background: color-mix(in oklab, var(--accent) 85%, var(--text));
  }

  .handout .handout-note {
    grid-column: 1 / -1;
  }

  .handout-note textarea {
    font: inherit;
    inline-size: 100%;
    padding: 8px;
    text-align: start;
    resize: vertical;
  }

  .handout .concrete-inputs .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    justify-items: start;
    gap: 2px;
  }

  .handout .concrete-inputs :is(.text, .date, select, textarea) {
    inline-size: 100%;
    text-align: start;
  }

  .desk-top {
    container-type: inline-size;
    padding: clamp(8px, 3cqi, 32px);
    background: color-mix(in oklab, var(--text) 12%, var(--ground));
    border-radius: 6px;
  }

  .desk-top .paper {
    max-inline-size: 58em;
    margin-inline: auto;
    padding: clamp(12px, 4cqi, 40px);
    box-shadow: 0 2px 10px rgb(0 0 0 / 25%);
    font-size: 0.8125rem;
  }

  .tick-line {
    display: flex;
    gap: 8px;
    align-items: center;
    min-block-size: 36px;
    cursor: pointer;
  }

  .tick-line input {
    inline-size: 20px;
    block-size: 20px;
    margin: 0;
    flex: none;
  }

  .plain-list {
    padding-inline-start: 16px;
    list-style: disc;
  }

  .kept {
    display: grid;
    gap: 4px;
  }

  .kept li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 4px 16px;
    border-block-end: 1px solid var(--line);
    padding-block: 4px;
    overflow-wrap: anywhere;
  }

  .shared-computer {
    border-inline-start: 3px solid var(--alert);
    padding-inline-start: 12px;
  }

  /* Printed from there: on the page it is nowhere. */
  .print-frame {
    position: fixed;
    inset-block-start: 0;
    inset-inline-end: 100%;
    inline-size: 1000px;
    block-size: 1000px;
    border: 0;
    opacity: 0;
    pointer-events: none;
  }

  /* Where the page around is printed, of this panel only the sheet is. */
  @media print {
    .handout > :not(.boxes),
    .handout .box:not(.handout-look),
    .handout-look > summary {
      display: none;
    }

    .handout .box {
      border: 0;
    }

    .desk-top,
    .desk-top .paper {
      padding: 0;
      background: none;
      box-shadow: none;
      max-inline-size: none;
    }
  }
`;
