/**
 * Lets the panels be moved among each other by buttons.
 * @param {HTMLElement} list
 * @param {(text: string) => void} say
 */
export function makeMovable(list, say) {
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
