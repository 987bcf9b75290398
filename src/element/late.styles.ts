import { css } from 'lit';

/** What panels have in common that are fetched. */
export const lateStyles = css`
  .panel-title {
    font-size: var(--large);
    color: var(--text);
  }

  .act {
    border: 1px solid var(--edge);
    padding-inline: 12px;
    min-block-size: 36px;
  }
`;
