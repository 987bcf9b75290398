import { css } from 'lit';

/** One column on a phone; from 40em two: picture and inputs, numbers and reasons. The answer stands over both. */
export const splitStyles = css`
  .split {
    display: grid;
    gap: 24px;
    padding: 20px var(--gutter);
  }

  .answer {
    font: inherit;
    font-size: var(--huge);
    line-height: 1.25;
    letter-spacing: -0.01em;
    text-wrap: balance;
    /* Room for the longest sentence, in German too: nothing below moves when the sentence grows by a line. */
    min-block-size: 4lh;
  }

  .answer strong {
    font-weight: 700;
    white-space: nowrap;
  }

  @container planner (inline-size < 22em) {
    .answer strong {
      white-space: normal;
    }
  }

  .left {
    container: picture / inline-size;
  }

  /* Painted apart: what does not change while a slider moves is not painted again. */
  .answer,
  .ring,
  .field,
  .week,
  .notes {
    isolation: isolate;
  }

  .left,
  .numbers {
    display: grid;
    gap: 20px;
    align-content: start;
    min-inline-size: 0;
  }

  @container planner (inline-size >= 34em) {
    .answer {
      min-block-size: 3lh;
    }
  }

  @container planner (inline-size >= 40em) {
    .split {
      grid-template-columns: minmax(0, 5fr) minmax(0, 7fr);
      column-gap: clamp(24px, 4cqi, 48px);
      padding-block: 28px;
    }
    .answer {
      grid-column: 1 / -1;
    }
  }

  @container planner (inline-size >= 64em) {
    .answer {
      min-block-size: 2lh;
    }
  }
`;
