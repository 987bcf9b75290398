import { css } from 'lit';

/** Sessions as cards: the colour of their kind at the edge, name and minutes always in words. */
export const cardStyles = css`
  .cards {
    grid-area: cards;
    display: grid;
    align-content: start;
    gap: 4px;
    min-block-size: 36px;
    min-inline-size: 0;
  }

  .card {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 8px;
    inline-size: 100%;
    padding-block: 6px;
    padding-inline: 12px 24px;
    text-align: start;
    background: var(--ground);
    border: 1px solid var(--edge);
    border-inline-start: 6px solid var(--category);
    border-radius: 6px;
    overflow-wrap: anywhere;
    hyphens: auto;
  }

  .card[aria-expanded='true'] {
    border-color: var(--accent);
    border-inline-start-color: var(--category);
    box-shadow: 0 0 0 1px var(--accent);
  }

  .card[data-state='pinned'] {
    border-style: double;
    border-width: 3px;
    border-inline-start: 6px solid var(--category);
  }

  .card[data-state='done'] {
    background: none;
    border-style: dashed;
    border-inline-start: 6px solid var(--category);
  }

  .card[data-carried='true'] {
    z-index: 1;
    opacity: 0.85;
    pointer-events: none;
    outline: 2px dashed var(--accent);
    outline-offset: 2px;
  }

  .card .mark {
    font-size: var(--small);
    font-style: italic;
    color: var(--muted);
  }

  .card strong {
    min-inline-size: 4em;
  }

  .grip {
    position: absolute;
    inset-block-end: 0;
    inset-inline-end: 0;
    inline-size: 24px;
    block-size: 100%;
    touch-action: none;
    cursor: grab;
    background: radial-gradient(circle, var(--edge) 1.2px, transparent 1.5px) center / 6px 6px;
    background-clip: content-box;
    padding: 8px 6px;
    border-radius: 6px;
  }

  .card[data-state='done'] .grip {
    display: none;
  }

  @container planner (inline-size >= 760px) {
    .card {
      flex-direction: column;
      padding-inline: 6px 4px;
      gap: 0;
    }

    .card .kind {
      font-size: var(--small);
    }

    .grip {
      inset-block: 0 auto;
      block-size: 28px;
    }
  }

  @media (prefers-reduced-motion: no-preference) {
    .day {
      transition: background-color 150ms;
    }
  }
`;
