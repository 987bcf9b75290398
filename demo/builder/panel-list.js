/**
 * Lets the panels be moved among each other by buttons.
 * @param {HTMLElement} list
 * @param {(text: string) => void} say
 */
export function makeMovable(list, say) {
  for (const item of list.children) item.append(movesOf(item.dataset.name));
  list.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest('button') : null;
    if (!button || button.ariaDisabled === 'true') return;
    move(button);
    markEnds(list);
    button.focus();
    const items = [...list.children];
    const item = button.closest('li');
    say(`${item?.dataset.name} is now ${items.indexOf(item) + 1} of ${items.length}.`);
    list.dispatchEvent(new Event('change', { bubbles: true }));
  });
  markEnds(list);
}

const arrows = { up: 'M3 10l5-5 5 5', down: 'M3 6l5 5 5-5' };

/** @param {string} name of what is moved */
function movesOf(name) {
  const moves = Object.assign(document.createElement('span'), { className: 'moves' });
  for (const [way, path] of Object.entries(arrows)) {
    const button = Object.assign(document.createElement('button'), {
      type: 'button',
      ariaLabel: `Move ${way}: ${name}`,
    });
    button.dataset.move = way;
    button.append(drawing(path));
    moves.append(button);
  }
  return moves;
}

/** @param {string} path */
function drawing(path) {
  const [svg, line] = ['svg', 'path'].map((name) => document.createElementNS('http://www.w3.org/2000/svg', name));
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('aria-hidden', 'true');
  line.setAttribute('d', path);
  svg.append(line);
  return svg;
}

/** @param {HTMLButtonElement} button */
function move(button) {
  const item = button.closest('li');
  if (button.dataset.move === 'up') item?.previousElementSibling?.before(item);
  else item?.nextElementSibling?.after(item);
}

/** The first cannot go up, nor the last down. They stay in reach of the keyboard. @param {HTMLElement} list */
function markEnds(list) {
  for (const item of list.children)
    for (const button of item.querySelectorAll('button')) {
      const isUp = button.dataset.move === 'up';
      button.ariaDisabled = String(item === (isUp ? list.firstElementChild : list.lastElementChild));
    }
}
