import { css } from 'lit';

/** The table of the week: planned minutes large, exact ones behind, columns that keep their width while numbers change. */
export const weekTableStyles = css`
  .week {
    border-collapse: collapse;
    table-layout: fixed;
    inline-size: 100%;
  }

  .week th,
  .week td {
    padding: 4px;
    block-size: 45px;
    text-align: end;
    font-weight: 400;
    border-block-end: 1px solid var(--line);
  }

  .week thead th {
    block-size: 28px;
    font-size: var(--small);
    color: var(--muted);
    vertical-align: bottom;
  }

  .week .kind {
    text-align: start;
    padding-inline: 0;
    hyphens: auto;
  }

  .kind > span {
    display: grid;
    grid-template-columns: auto 1fr;
    align-items: center;
    gap: 6px;
    overflow-wrap: anywhere;
  }

  .week tbody .kind {
    font-size: 0.9375em;
    font-weight: 600;
  }

  .week .share {
    display: none;
    color: var(--muted);
  }

  .week .exact {
    inline-size: 15%;
    color: var(--muted);
  }

  .week .planned {
    inline-size: 18%;
  }

  .week .sessions {
    inline-size: 35%;
    padding-inline-end: 0;
  }

  .week td.planned {
    font-size: var(--large);
    font-weight: 600;
  }

  .week select {
    padding-inline: 6px 0;
    inline-size: 100%;
    min-inline-size: 0;
  }

  .week tfoot th,
  .week tfoot td {
    border: 0;
    color: var(--muted);
  }

  .week tfoot td.planned {
    color: var(--text);
  }

  .basis {
    display: grid;
    font-size: var(--small);
    color: var(--muted);
  }

  .week .empty {
    color: var(--muted);
  }

  .swatch {
    display: inline-block;
    inline-size: 12px;
    block-size: 12px;
    border-radius: 3px;
    background: var(--category);
    forced-color-adjust: none;
    print-color-adjust: exact;
  }

  /* Where it gets too narrow for five columns, the exact minutes are one question away: why is it 75? */
  /* By the planner's width: of a container of its own, Chromium may lay out nothing once a sheet that asks for it comes late. */
  @container planner (inline-size < 19.5em) {
    .week .exact {
      display: none;
    }
    .week .planned {
      padding-inline: 0;
    }
    .week td.planned {
      font-size: 1em;
    }
    .week .sessions {
      inline-size: 43%;
    }
    .week tbody .kind {
      font-size: 0.8125em;
    }
    .week select {
      padding-inline-start: 4px;
    }
  }

  @container planner (28.8em <= inline-size < 40em) or (inline-size >= 51.5em) {
    .week .share {
      display: table-cell;
      inline-size: 13%;
    }
    .week .exact {
      inline-size: 13%;
    }
    .week .planned {
      inline-size: 16%;
    }
    .week .sessions {
      inline-size: 28%;
    }
  }

  @media (forced-colors: active) {
    .swatch {
      background: CanvasText;
    }
  }
`;
