import { css } from 'lit';

/** What the panels have in common that make minutes concrete. */
export const concreteStyles = css`
  .running,
  .strength,
  .checks,
  .basis-panel,
  .record,
  .handout {
    position: relative;
  }

  .concrete-inputs {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(17em, 100%), 1fr));
    gap: 8px 24px;
    align-items: start;
  }

  /* Where a label and its field do not fit beside each other, one goes under the other. */
  .concrete-inputs .field > :is(.hint, input[type='range']) {
    max-inline-size: 100%;
  }

  .concrete-inputs :is(.date, .text, select) {
    inline-size: auto;
    max-inline-size: 100%;
    min-inline-size: 0;
  }

  .concrete-inputs .date,
  .concrete-inputs .text {
    padding-inline: 8px;
  }

  .concrete-inputs .hint {
    min-block-size: 0;
  }

  .concrete-inputs .hint:empty {
    display: none;
  }

  .concrete-notes {
    display: grid;
    gap: 8px;
  }

  .concrete-notes li {
    padding-inline-start: 12px;
    border-inline-start: 3px solid var(--line);
  }

  .concrete-notes li[data-level='caution'] {
    border-inline-start-color: var(--alert);
  }

  :is(.running, .strength, .checks, .basis-panel) h4 {
    margin: 0;
    font: inherit;
    font-weight: 600;
  }

  .boxes {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }

  .box {
    border: 1px solid var(--line);
    border-radius: 6px;
    padding: 0 12px;
    background: var(--ground);
  }

  .box[open] {
    padding-block-end: 12px;
  }

  .box > summary {
    cursor: pointer;
    font-weight: 600;
    padding-block: 8px;
    min-block-size: 40px;
  }

  .box > * + * {
    margin-block-start: 8px;
  }

  .box .scroll {
    overflow: auto;
  }

  .box table {
    border-collapse: collapse;
  }

  .box table :is(th, td) {
    padding: 4px 24px 4px 0;
    text-align: start;
    font-weight: 400;
    border-block-end: 1px solid var(--line);
  }

  .box thead th,
  .box caption {
    color: var(--muted);
    font-size: var(--small);
    text-align: start;
  }

  .box .scroll :is(td, tbody th) {
    white-space: nowrap;
  }

  .cited {
    padding-inline-start: 16px;
    overflow-wrap: anywhere;
  }

  [data-drop] {
    outline: 3px dashed var(--accent);
    outline-offset: -6px;
  }

  .by-hand {
    font: inherit;
    inline-size: 100%;
    padding: 8px;
    text-align: start;
    resize: vertical;
  }

  .file-line {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 4px;
  }

  /* What a browser says beside its own button may be long. */
  .file-line input {
    inline-size: 100%;
    overflow: clip;
  }
`;
