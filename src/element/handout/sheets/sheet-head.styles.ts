import { css } from 'lit';

/** Whom a sheet is for, what it is, and whose page it comes from. */
export const sheetHeadStyles = css`
  .paper header {
    display: grid;
    grid-template-columns: minmax(0, 1fr) fit-content(45%);
    row-gap: 0.15em;
  }

  .paper header > :not(.p-logo) {
    grid-column: 1;
  }

  .paper .p-logo {
    grid-area: 1 / 2 / span 3;
    display: flex;
    align-items: center;
    gap: 0.6em;
    max-inline-size: 15em;
    margin-inline-start: 1.5em;
    align-self: start;
  }

  .paper .p-logo > :is(canvas, svg) {
    flex: none;
    block-size: 3.4em;
    inline-size: auto;
    max-inline-size: 15em;
    object-fit: contain;
  }

  .paper .p-over {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 1.5em;
    color: var(--pale);
  }

  .paper h3 {
    font-size: 1.75em;
    font-weight: 700;
    line-height: 1.15;
  }

  /* On a phone: the logo above. */
  @container (max-width: 36em) {
    .paper header {
      display: flex;
      flex-direction: column;
    }

    .paper .p-logo {
      order: -1;
      margin-inline-start: 0;
    }
  }
`;
