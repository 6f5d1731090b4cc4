import { cleanup, render, screen } from '@testing-library/react';
import { useRef } from 'react';
import { afterEach, expect, test } from 'vitest';
import { useNextCard } from '../../../../../src/ui/desks/design/findings/use-next-card.ts';

afterEach(cleanup);

function List({ cards }: { readonly cards: readonly string[] }) {
  const list = useRef<HTMLUListElement>(null);
  const focusing = useNextCard(list);
  return (
    <ul ref={list} tabIndex={-1} data-name="list" {...focusing}>
      {cards.map((name) => (
        <li key={name} data-card data-name={name} tabIndex={-1}>
          <button type="button">{name}</button>
        </li>
      ))}
    </ul>
  );
}

test.each([
  ['the next one', ['a', 'b', 'c'], 'b', ['a', 'c'], 'c'],
  ['after the last the one before', ['a', 'b'], 'b', ['a'], 'a'],
  ['after the only one the list', ['a'], 'a', [], 'list'],
  ['many at once', ['a', 'b', 'c', 'd'], 'b', ['d'], 'd'],
])('the card that had the focus goes: %s takes it', (_, cards, focused, left, taking) => {
  const { rerender } = render(<List cards={cards} />);
  screen.getByRole('button', { name: focused }).focus();
  rerender(<List cards={left} />);
  expect(document.activeElement).toHaveAttribute('data-name', taking);
});

test('where the focus is elsewhere it stays there', () => {
  const { rerender } = render(<List cards={['a', 'b']} />);
  screen.getByRole('button', { name: 'a' }).focus();
  screen.getByRole('button', { name: 'b' }).focus();
  rerender(<List cards={['b']} />);
  expect(screen.getByRole('button', { name: 'b' })).toHaveFocus();
});
