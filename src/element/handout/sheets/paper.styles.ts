import { css } from 'lit';

/*
 * What is printed, and its likeness on the screen. All lengths are in em, so that a page that has much to say fits by one
 * number, its size of type. Paper is white and its ink black, whatever the scheme of the page; colour is never alone,
 * and the colours of the kinds are those of the planner.
 */
export const paperStyles = css`
  .paper {
    --ink: #000;
    --pale: #5a5a5a;
    --rule: #9a9a9a;
    color-scheme: light;
    color: var(--ink);
    background: #fff;
    line-height: 1.35;
    font-variant-numeric: tabular-nums lining-nums;
    text-align: start;
    overflow-wrap: break-word;
  }

  .paper[data-ink='colour'] [data-category='slow'] {
    --kind: var(--slow);
  }
  .paper[data-ink='colour'] [data-category='tempo'] {
    --kind: var(--tempo);
  }
  .paper[data-ink='colour'] [data-category='intervals'] {
    --kind: var(--intervals);
  }
  .paper[data-ink='colour'] [data-category='cross'] {
    --kind: var(--cross);
  }
  .paper[data-ink='colour'] [data-category='strength'] {
    --kind: var(--strength);
  }

  .paper * {
    box-sizing: border-box;
  }

  .paper :is(h3, h4, p, ul, ol, table) {
    margin: 0;
    padding: 0;
    font: inherit;
    color: inherit;
  }

  .paper :is(ul, ol) {
    list-style: none;
  }

  .paper .page {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.9em;
    align-content: start;
  }

  .paper .page + .page {
    margin-block-start: 2em;
    padding-block-start: 2em;
    border-block-start: 1px dashed var(--rule);
  }

  .paper .p-lead {
    font-size: 1.1em;
  }

  .paper h4 {
    font-weight: 700;
  }

  .paper table {
    border-collapse: collapse;
    inline-size: 100%;
  }

  .paper caption {
    text-align: start;
    font-weight: 700;
    padding-block-end: 0.2em;
  }

  .paper table :is(th, td) {
    text-align: start;
    vertical-align: top;
    font-weight: 400;
    padding: 0.3em 0.8em 0.3em 0;
    border-block-end: 0.06em solid var(--rule);
  }

  .paper table thead th {
    font-size: 0.85em;
    color: var(--pale);
    border-block-end: 0.12em solid var(--ink);
  }

  .paper .p-days tbody th {
    font-weight: 700;
    white-space: nowrap;
  }

  .paper .p-days tbody th small {
    display: block;
    font-size: 0.85em;
    font-weight: 400;
    color: var(--pale);
  }

  .paper .p-what {
    font-weight: 700;
  }

  .paper .p-what .p-tick {
    display: inline-block;
    inline-size: 0.85em;
    block-size: 0.85em;
    border: 0.12em solid var(--kind, var(--ink));
    border-radius: 0.1em;
    print-color-adjust: exact;
    margin-inline-end: 0.5em;
    vertical-align: -0.05em;
  }

  .paper .p-length {
    font-weight: 700;
    white-space: nowrap;
  }

  .paper .p-effort,
  .paper .p-what {
    white-space: nowrap;
  }

  /* What is left of the width is for the sentence. */
  .paper .p-days td:last-child {
    inline-size: 100%;
    padding-inline-end: 0;
  }

  .paper .p-rest {
    color: var(--pale);
  }

  .paper .p-sets {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(19em, 100%), 1fr));
    gap: 0.6em 1.2em;
  }

  .paper .p-sets section {
    border: 0.06em solid var(--rule);
    border-radius: 0.4em;
    padding: 0.5em 0.8em 0.6em;
    break-inside: avoid;
  }

  .paper .p-sets h4 {
    display: flex;
    justify-content: space-between;
    gap: 1em;
  }

  .paper .p-sets li {
    padding-block: 0.2em;
    border-block-start: 0.06em solid #d4d4d4;
    font-size: 0.92em;
  }

  .paper .p-exercise {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.8em;
  }

  .paper .p-exercise > :first-child {
    flex: 1 1 9em;
  }

  .paper .p-exercise > :last-child {
    margin-inline-start: auto;
    text-align: end;
  }

  .paper .p-exercise small {
    font-size: 1em;
    color: var(--pale);
  }

  .paper .p-pause {
    color: var(--pale);
    font-size: 0.88em;
  }

  .paper .p-note {
    white-space: pre-line;
    border-inline-start: 0.2em solid var(--ink);
    padding-inline-start: 0.8em;
  }

  .paper .p-cautions {
    font-size: 0.78em;
    columns: 2;
    column-gap: 2em;
  }

  .paper .p-cautions li {
    break-inside: avoid;
    padding-block-end: 0.2em;
  }

  .paper .p-cautions li::before {
    content: '· ' / '';
  }

  .paper footer {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 1.5em;
    border-block-start: 0.12em solid var(--ink);
    padding-block-start: 0.4em;
  }

  .paper footer p:last-child {
    color: var(--pale);
    font-size: 0.85em;
  }

  @container (max-width: 36em) {
    .paper .p-cautions {
      columns: 1;
    }

    .paper .p-days :is(table, caption, thead, tbody, tr, th, td) {
      display: block;
    }

    .paper .p-days thead {
      position: absolute;
      clip-path: inset(50%);
    }

    .paper .p-days tr {
      padding-block: 0.3em;
      border-block-end: 0.06em solid var(--rule);
    }

    .paper .p-days table :is(th, td) {
      border: 0;
      white-space: normal;
      padding-block: 0.05em;
    }

    .paper .p-scroll {
      overflow-x: auto;
    }
  }
`;
