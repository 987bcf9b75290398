import { canMove, moveCard } from '../../plan/week/acts.js';
import type { Card } from '../../plan/week/cards.js';
import { categoryName } from '../../words/category-name.js';
import { dayName } from '../../words/week/day-name.js';
import type { BoardView } from './board-view.js';
import { cardKey } from './card.js';
import { costAgainst, weekWith } from './carried-line.js';

/** A pointer that moves less is a press. */
const dragPixels = 6;
const lastDay = 6;

/** Space picks a session up and puts it down, arrows carry it from day to day, Escape leaves it where it was. */
export function cardKeys(view: BoardView): (event: KeyboardEvent) => void {
  return (event) => {
    const card = cardOf(view, event);
    if (!card || event.ctrlKey || event.metaKey || event.altKey) return;
    const isDone = handleKey(view, card, event);
    if (!isDone) return;
    event.preventDefault();
    event.stopPropagation();
  };
}

function handleKey(view: BoardView, card: Card, { key, currentTarget }: KeyboardEvent): boolean {
  const { board } = view;
  if (!board.carrying) {
    if (key !== ' ' || card.state === 'done') return false;
    pickUp(view, card);
    return true;
  }
  if (key === ' ' || key === 'Enter') putDown(view);
  else if (key === 'Escape') leave(view);
  else if (ways[key]) carryTo(view, board.carrying.day + ways[key] * (isRightToLeft(currentTarget, key) ? -1 : 1));
  else {
    if (key === 'Tab') leave(view, 'let it go');
    return false;
  }
  return true;
}

const ways: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };

function isRightToLeft(target: EventTarget | null, key: string): boolean {
  return (
    (key === 'ArrowLeft' || key === 'ArrowRight') &&
    target instanceof Element &&
    getComputedStyle(target).direction === 'rtl'
  );
}

function pickUp(view: BoardView, card: Card): void {
  const { words, method, board } = view;
  board.carrying = { card, day: card.day };
  board.opened = null;
  board.say(
    words.say('board.told.picked-up', {
      kind: categoryName(words, method, card.category),
      minutes: words.minutes(card.minutes),
      day: dayName(words, card.day),
    }),
  );
}

function carryTo(view: BoardView, day: number): void {
  const { words, board } = view;
  const { carrying } = board;
  if (!carrying || day < 0 || day > lastDay) return;
  board.carrying = { ...carrying, day };
  const cost = costAgainst(view, weekWith(view, carrying.card, day));
  board.say(words.say('board.told.over', { day: words.capital(dayName(words, day)), cost }));
}

/** Puts the session down where it is; on its own day it stays as it was. */
function putDown(view: BoardView): void {
  const { words, board, week } = view;
  const { carrying } = board;
  board.carrying = null;
  if (!carrying) return;
  const { card } = carrying;
  const day = canMove(week, card, carrying.day) ? carrying.day : card.day;
  board.focusOn(`[data-key="${cardKey({ ...card, day })}"]`);
  board.message = words.say('board.told.put-down', { day: dayName(words, day) });
  if (day === card.day) board.update();
  else board.act(moveCard(week, card, day));
}

function leave({ words, board }: BoardView, focus: 'keep it' | 'let it go' = 'keep it'): void {
  const { carrying } = board;
  board.carrying = null;
  if (carrying && focus === 'keep it') board.focusOn(`[data-key="${cardKey(carrying.card)}"]`);
  board.say(words.say('board.told.left'));
}

/** Drags a session with a pointer; on a touch screen by its grip, so that the page can still be scrolled. */
export function cardPointer(view: BoardView): (event: PointerEvent) => void {
  return (event) => {
    const card = cardOf(view, event);
    const { target, currentTarget, button, pointerType } = event;
    const element = target instanceof Element ? target.closest<HTMLElement>('.card') : null;
    const isGrip = target instanceof Element && target.closest('.grip') !== null;
    if (
      !card ||
      !element ||
      element.matches(':disabled') ||
      card.state === 'done' ||
      button !== 0 ||
      (pointerType !== 'mouse' && !isGrip)
    )
      return;
    if (currentTarget instanceof HTMLElement) drag(view, { card, element, days: currentTarget, start: event });
  };
}

interface Drag {
  readonly card: Card;
  readonly element: HTMLElement;
  readonly days: HTMLElement;
  readonly start: PointerEvent;
}

function drag(view: BoardView, { card, element, days, start }: Drag): void {
  const { board } = view;
  const listening = new AbortController();
  const { signal } = listening;
  const stop = (): void => {
    listening.abort();
    element.style.removeProperty('translate');
  };
  const move = (event: PointerEvent): void => {
    const x = event.clientX - start.clientX;
    const y = event.clientY - start.clientY;
    if (!board.carrying && Math.hypot(x, y) < dragPixels) return;
    element.style.setProperty('translate', `${x}px ${y}px`);
    const day = dayAt(days, event) ?? board.carrying?.day ?? card.day;
    if (board.carrying?.day === day) return;
    board.carrying = { card, day };
    board.opened = null;
    board.update();
  };
  const drop = (): void => {
    stop();
    if (!board.carrying) return;
    if (element.matches(':disabled')) {
      leave(view);
      return;
    }
    // The press that ends a drag is no press on the card.
    addEventListener('click', swallow, { capture: true, once: true });
    setTimeout(() => {
      removeEventListener('click', swallow, { capture: true });
    });
    putDown(view);
  };
  const cancel = (event: Event): void => {
    if (event instanceof KeyboardEvent && event.key !== 'Escape') return;
    event.preventDefault();
    stop();
    leave(view);
  };
  addEventListener('pointermove', move, { signal });
  addEventListener('pointerup', drop, { signal });
  addEventListener('pointercancel', cancel, { signal });
  addEventListener('keydown', cancel, { signal, capture: true });
}

const swallow = (event: Event): void => {
  event.stopPropagation();
  event.preventDefault();
};

/** The day under a pointer. */
function dayAt(days: HTMLElement, { clientX, clientY }: PointerEvent): number | null {
  const isIn = (element: Element): boolean => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    return clientX >= left && clientX <= right && clientY >= top && clientY <= bottom;
  };
  const found = [...days.children].findIndex(isIn);
  return found < 0 ? null : found;
}

function cardOf({ board }: BoardView, { target }: Event): Card | undefined {
  const key = target instanceof Element ? target.closest<HTMLElement>('.card')?.dataset['key'] : undefined;
  return key === undefined ? undefined : board.cardByKey(key);
}
