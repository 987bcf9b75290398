import { css } from 'lit';

/** The ring. SVG paint is not replaced in forced colours, so it is set to a system colour there; the labels tell the parts. */
export const ringStyles = css`
  .ring {
    position: relative;
    direction: ltr;
    inline-size: 100%;
    max-inline-size: 24em;
    margin-inline: auto;
    line-height: 1.25;
  }

  .ring svg {
    display: block;
    inline-size: 100%;
    overflow: visible;
  }

  .arc {
    fill: none;
    stroke: var(--category);
    stroke-width: 24;
  }

  .leader {
    stroke: var(--category);
    stroke-width: 1.5;
  }

  .ring-middle,
  .ring-label {
    position: absolute;
  }

  .ring-middle {
    inset: 50% auto auto 50%;
    transform: translate(-50%, -50%);
    display: grid;
    justify-items: center;
    text-align: center;
  }

  .ring-middle strong {
    font-size: var(--large);
    line-height: 1.1;
    max-inline-size: 4.5em;
    text-wrap: balance;
  }

  .ring-middle span {
    max-inline-size: 7em;
    overflow-wrap: anywhere;
    font-size: var(--small);
    color: var(--muted);
  }

  .ring-label {
    top: var(--y);
    translate: 0 var(--rise);
    /* Never larger than the room beside a small ring: there the names are words of ten letters. */
    font-size: min(var(--small), 4.4cqi);
    display: grid;
    overflow-wrap: anywhere;
    hyphens: auto;
  }

  .ring-label.to-right {
    left: calc(var(--x) + 4px);
    right: 0;
  }

  .ring-label.to-left {
    right: calc(100% - var(--x) + 4px);
    left: 0;
    text-align: right;
  }

  /* A small ring has room for the hours only; the answer above it says the phase. */
  @container picture (inline-size < 20em) {
    .ring-middle span {
      display: none;
    }
  }

  @media (prefers-reduced-motion: no-preference) {
    .arc {
      transition:
        stroke-dasharray 120ms ease-out,
        stroke-dashoffset 120ms ease-out;
    }
  }

  @media (forced-colors: active) {
    .arc,
    .leader {
      stroke: CanvasText;
    }
  }
`;
