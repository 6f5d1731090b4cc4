/** What can be opened and closed in the page, as steps that run there. */

export const DESKS = ['Rehearse', 'Practise', 'Check', 'Sheet', 'Design'];

/** Closes the card that is open, opens that of the key by a number, else by the turn; gives what stands there then. */
export function openCard(turn, given) {
  const closing = new KeyboardEvent('keydown', { key: 'Escape', bubbles: true, cancelable: true });
  document.querySelector('div[role=dialog]')?.dispatchEvent(closing);
  const key = document.querySelectorAll('[data-key]')[(given ?? turn) % 20];
  const opening = new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true });
  key.dispatchEvent(opening);
  return 'div[role=dialog]';
}

/** Opens a desk by its name as a press on it does. It is open once its own main part stands there. */
export function openDesk(_turn, name) {
  const radios = [...document.querySelectorAll('header input[type=radio]')];
  document.querySelector('main')?.setAttribute('data-before', '');
  radios.find((radio) => radio.closest('label').textContent.trim() === name).click();
  return 'main:not([data-before])';
}
