import { css } from 'lit';

/** Inputs: the label and the value on one line, the slider under them. */
export const inputsStyles = css`
  .inputs {
    display: grid;
    gap: 16px;
  }

  .field {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    column-gap: 8px;
  }

  .field label {
    font-weight: 600;
  }

  /* In two lines beside its value; above it where its longest word leaves no room. */
  .inputs label {
    flex: 1;
  }

  .field > select {
    max-inline-size: 10.5em;
  }

  .entry {
    display: flex;
    align-items: center;
    overflow: clip;
    overflow-clip-margin: 4px;
  }

  .entry:focus-within {
    border-color: var(--accent);
  }

  .entry .typed {
    border: 0;
    background: none;
    text-align: end;
    min-block-size: 34px;
    padding: 0;
    min-inline-size: 2.5em;
    /* A text that is no value scrolls inside. */
    max-inline-size: 4em;
    field-sizing: content;
  }

  .typed[aria-invalid='true'] {
    color: var(--alert);
    text-decoration: underline wavy;
  }

  .unit {
    color: var(--muted);
    padding-inline: 4px;
  }

  .step {
    min-inline-size: 34px;
    min-block-size: 34px;
    border-radius: 0;
    font-size: var(--large);
    line-height: 1;
  }

  .field > :is(.hint, .ticks) {
    inline-size: 100%;
  }

  .hint {
    font-size: var(--small);
    color: var(--muted);
    min-block-size: 1lh;
  }

  .hint.wrong {
    color: var(--alert);
  }

  input[type='range'] {
    appearance: none;
    inline-size: 100%;
    block-size: 32px;
    margin: 0;
    background: none;
    cursor: pointer;
    touch-action: pan-y;
  }

  input[type='range']::-webkit-slider-runnable-track {
    block-size: 6px;
    border-radius: 3px;
    border: 1px solid var(--edge);
    background: linear-gradient(to right, var(--accent) var(--fill, 0%), var(--ground) var(--fill, 0%));
  }

  input[type='range']:dir(rtl)::-webkit-slider-runnable-track {
    background: linear-gradient(to left, var(--accent) var(--fill, 0%), var(--ground) var(--fill, 0%));
  }

  input[type='range']::-moz-range-track {
    box-sizing: border-box;
    block-size: 6px;
    border-radius: 3px;
    border: 1px solid var(--edge);
    background: var(--ground);
  }

  input[type='range']::-moz-range-progress {
    block-size: 6px;
    border-radius: 3px;
    background: var(--accent);
  }

  input[type='range']::-webkit-slider-thumb {
    appearance: none;
    inline-size: 24px;
    block-size: 24px;
    margin-block-start: -10px;
    border-radius: 50%;
    border: 3px solid var(--ground);
    background: var(--accent);
    box-shadow: 0 0 0 1px var(--accent);
  }

  input[type='range']::-moz-range-thumb {
    box-sizing: border-box;
    inline-size: 24px;
    block-size: 24px;
    border-radius: 50%;
    border: 3px solid var(--ground);
    background: var(--accent);
    box-shadow: 0 0 0 1px var(--accent);
  }

  .ticks {
    display: flex;
    justify-content: space-between;
    padding-inline: 11px;
    margin-block-start: -6px;
    block-size: 4px;
  }

  .ticks span {
    inline-size: 2px;
    background: var(--edge);
  }

  @media (forced-colors: active) {
    input[type='range']::-webkit-slider-runnable-track {
      background: CanvasText;
    }
    input[type='range']::-webkit-slider-thumb {
      background: Highlight;
      border-color: Canvas;
      forced-color-adjust: none;
    }
  }
`;
