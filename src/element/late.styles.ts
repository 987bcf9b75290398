import { css } from 'lit';

/** What panels have in common that are fetched. */
export const lateStyles = css`
  [data-loading] {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 16px;
    padding: clamp(16px, 3cqi, 24px) var(--gutter);
    border-block-start: 1px solid var(--line);
  }

  /* WebKit does not show the focus of a date field by itself. */
  input[type='date']:focus-within {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }

  .panel-title {
    font-size: var(--large);
    color: var(--text);
  }

  .lead {
    font-size: var(--large);
  }

  .kind-mark {
    display: inline-block;
    inline-size: 0.75em;
    block-size: 0.75em;
    margin-inline-end: 6px;
    /* Seen where colours are forced. */
    border: 1px solid transparent;
    border-radius: 2px;
    background: var(--category);
    print-color-adjust: exact;
  }

  .act {
    border: 1px solid var(--edge);
    padding-inline: 12px;
    min-block-size: 36px;
  }

  .toolbar {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  .message {
    background: var(--tint);
    border-radius: 6px;
    padding: 8px 12px;
  }

  .message:empty {
    padding: 0;
  }

  .message textarea {
    inline-size: 100%;
    font: inherit;
  }
`;
