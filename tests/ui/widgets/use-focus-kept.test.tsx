import { cleanup, render, screen } from '@testing-library/react';
import { useRef } from 'react';
import { afterEach, describe, expect, test } from 'vitest';
import { useFocusKept } from '../../../src/ui/widgets/use-focus-kept.ts';

/** A begin button that gives way to a drill, with a field beside both. */
function Desk({ shows, keepsButton = false }: { shows: 'begin' | 'drill'; keepsButton?: boolean }) {
  const drill = useRef<HTMLElement>(null);
  useFocusKept(shows, () => drill.current);
  return (
    <>
      <input aria-label="field" />
      {(shows === 'begin' || keepsButton) && (
        <button type="button" disabled={shows === 'drill'}>
          Begin
        </button>
      )}
      {shows === 'drill' && <section aria-label="drill" tabIndex={-1} ref={drill} />}
    </>
  );
}

const drill = () => screen.getByRole('region', { name: 'drill' });

afterEach(cleanup);

describe('the focus, when what had it gives way', () => {
  test.each([
    { what: 'is gone', keepsButton: false },
    { what: 'is off', keepsButton: true },
  ])('goes to what took its place when it $what', ({ keepsButton }) => {
    const { rerender } = render(<Desk shows="begin" keepsButton={keepsButton} />);
    screen.getByRole('button').focus();
    rerender(<Desk shows="drill" keepsButton={keepsButton} />);
    expect(document.activeElement).toBe(drill());
  });

  test('stays where it is when it is elsewhere', () => {
    const { rerender } = render(<Desk shows="begin" />);
    const field = screen.getByRole('textbox');
    field.focus();
    rerender(<Desk shows="drill" />);
    expect(document.activeElement).toBe(field);
  });

  test('is not taken by what is there at first', () => {
    render(<Desk shows="drill" />);
    expect(document.activeElement).toBe(document.body);
  });
});
