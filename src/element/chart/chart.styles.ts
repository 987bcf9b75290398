import { css } from 'lit';

/**
 * The chart. The drawing stretches to its frame, so all strokes keep their width by themselves. SVG paint is not replaced
 * in forced colours: there lines are told apart by their dashes, areas by their edges, both by their labels.
 */
export const chartStyles = css`
  .sweep {
    container: sweep / inline-size;
  }

  .sweep-picture {
    direction: ltr;
    display: grid;
    grid-template-columns: max-content minmax(0, 1fr) fit-content(7.5em);
    grid-template-rows: auto auto 20em auto auto;
    font-size: var(--small);
    line-height: 1.2;
    break-inside: avoid;
  }

  .sweep-y-label,
  .sweep-x-label {
    grid-column: 1 / 3;
    color: var(--muted);
  }

  .sweep-x-label {
    grid-column: 2 / 3;
    grid-row: 5;
    justify-self: center;
    padding-block-start: 4px;
  }

  .sweep-marks {
    grid-area: 2 / 2;
    position: relative;
    isolation: isolate;
    block-size: calc(var(--rows) * 24px);
  }

  .sweep-marks span {
    position: absolute;
    left: var(--x);
    bottom: calc(var(--row) * 24px + 2px);
    translate: -50% 0;
    min-inline-size: 20px;
    line-height: 18px;
    padding-inline: 2px;
    text-align: center;
    border: 1px solid var(--edge);
    border-radius: 10px;
    background: var(--ground);
  }

  /* From a number in an upper row down to its line. */
  .sweep-marks span::after {
    content: '';
    position: absolute;
    z-index: -1;
    top: 100%;
    left: calc(50% - 0.5px);
    block-size: calc(var(--row) * 24px + 2px);
    border-left: 1px dashed var(--text);
  }

  .sweep-y {
    grid-area: 3 / 1;
    display: grid;
    padding-inline-end: 6px;
    color: var(--muted);
  }

  /* One over the other, so that the column is as wide as the widest. */
  .sweep-y span,
  .sweep-ends span {
    grid-area: 1 / 1;
    position: relative;
    top: var(--y);
    align-self: start;
    translate: 0 -50%;
  }

  .sweep-y span {
    justify-self: end;
  }

  .sweep-plot {
    grid-area: 3 / 2;
    position: relative;
    cursor: crosshair;
    touch-action: pan-y;
  }

  .sweep svg {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    overflow: visible;
    pointer-events: none;
  }

  .sweep-ends {
    grid-area: 3 / 3;
    display: grid;
    position: relative;
    min-inline-size: 1.5em;
  }

  .sweep .sweep-ends svg {
    inline-size: 14px;
  }

  .sweep-ends span {
    padding-inline-start: 18px;
    overflow-wrap: anywhere;
    hyphens: auto;
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    line-clamp: 2;
    overflow: hidden;
  }

  .sweep-inside {
    position: absolute;
    left: var(--x);
    top: var(--y);
    translate: -50% -50%;
    max-inline-size: 9em;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
    padding: 1px 4px;
    border-radius: 4px;
    background: var(--ground);
    pointer-events: none;
  }

  .sweep-x {
    grid-area: 4 / 2;
    position: relative;
    min-block-size: 1lh;
    padding-block-start: 4px;
    color: var(--muted);
  }

  .sweep-x:not(.choices) span {
    position: absolute;
    left: var(--x);
    translate: -50% 0;
    white-space: nowrap;
  }

  .sweep-x.choices {
    display: grid;
    grid-auto-flow: column;
    grid-auto-columns: minmax(0, 1fr);
    text-align: center;
  }

  /* No room for names beside the picture: what is read off it under the chart has them, with their colours. */
  @container sweep (inline-size < 26em) {
    .sweep-ends {
      display: none;
    }
    /* Half of the last number on the axis stands beyond its end. */
    .sweep-picture {
      padding-inline-end: 1.5em;
    }
    .sweep-x:not(.choices) span:nth-child(odd) {
      display: none;
    }
  }

  @container sweep (inline-size < 34em) {
    .sweep-x.choices span {
      writing-mode: vertical-rl;
      rotate: 180deg;
      justify-self: center;
      text-align: end;
    }
  }

  @container sweep (inline-size >= 40em) {
    .sweep-picture {
      grid-template-columns: max-content minmax(0, 1fr) fit-content(12em);
    }
  }

  .sweep path {
    fill: none;
    stroke: var(--category, var(--text));
    stroke-linecap: round;
    stroke-linejoin: round;
    vector-effect: non-scaling-stroke;
  }

  .sweep .sweep-grid {
    stroke: var(--line);
  }

  .sweep .sweep-line {
    stroke-width: 2.5px;
  }

  .sweep .sweep-area {
    fill: var(--category, var(--edge));
    stroke: var(--ground);
    stroke-width: 1.5px;
    print-color-adjust: exact;
  }

  /* Keeps the next two apart from areas of their own colour. */
  .sweep .sweep-halo {
    stroke: var(--ground);
    stroke-width: 4px;
    stroke-linecap: butt;
  }

  .sweep .sweep-turns {
    stroke: var(--text);
    stroke-dasharray: 3 3;
    stroke-linecap: butt;
  }

  .sweep .sweep-ruler {
    stroke: var(--accent);
    stroke-width: 2px;
  }

  .sweep .sweep-dot {
    stroke-width: 9px;
  }

  .reading {
    display: grid;
  }

  .reading label {
    font-weight: 600;
  }

  @media (forced-colors: active) {
    .sweep path {
      stroke: CanvasText;
    }
    .sweep .sweep-grid {
      opacity: 0.3;
    }
    .sweep .sweep-halo {
      stroke: Canvas;
    }
    .sweep .sweep-area {
      fill: Canvas;
      stroke: CanvasText;
    }
    .sweep .sweep-ruler {
      stroke: Highlight;
    }
  }
`;
