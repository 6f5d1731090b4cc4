import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { CommitField } from '../../../src/ui/widgets/commit-field.tsx';
import { NumberField } from '../../../src/ui/widgets/number-field.tsx';
import { Slider } from '../../../src/ui/widgets/slider.tsx';
import { SearchField, TextField } from '../../../src/ui/widgets/text-field.tsx';

afterEach(cleanup);

describe('a text field', () => {
  test('has its label, and says what is wrong with it', () => {
    render(<TextField label="Name" value="" onChange={() => {}} error="A name is needed." />);
    const field = screen.getByRole('textbox', { name: 'Name' });
    expect(field).toHaveAccessibleDescription('A name is needed.');
    expect(field).toBeInvalid();
  });

  test('keeps its label for those who hear it where it is not shown', () => {
    render(<TextField label="Name" hideLabel value="x" onChange={() => {}} />);
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveValue('x');
  });
});

function Search() {
  const [text, setText] = useState('arrow');
  return <SearchField label="Search needs" value={text} onChange={setText} />;
}

describe('a search field', () => {
  test('is emptied by Escape, which goes no further', async () => {
    const heard = vi.fn();
    document.addEventListener('keydown', heard);
    render(<Search />);
    const field = screen.getByRole('searchbox', { name: 'Search needs' });
    await userEvent.type(field, '{Escape}');
    expect(field).toHaveValue('');
    expect(heard).not.toHaveBeenCalled();
    await userEvent.type(field, '{Escape}');
    expect(heard).toHaveBeenCalledOnce();
    document.removeEventListener('keydown', heard);
  });
});

describe('a field that is taken over when it is finished', () => {
  function setup() {
    const onCommit = vi.fn();
    const problemOf = (text: string) => (text === '' ? 'A name is needed.' : undefined);
    render(<CommitField label="Name" value="Reed" onCommit={onCommit} problemOf={problemOf} />);
    return { onCommit, field: screen.getByRole('textbox', { name: 'Name' }) };
  }

  test('is taken over once, on Enter', async () => {
    const { onCommit, field } = setup();
    await userEvent.type(field, ' bed{Enter}');
    await userEvent.tab();
    expect(onCommit.mock.calls).toEqual([['Reed bed']]);
  });

  test('is taken over on leaving', async () => {
    const { onCommit, field } = setup();
    await userEvent.type(field, ' bed ');
    await userEvent.tab();
    expect(onCommit.mock.calls).toEqual([['Reed bed']]);
  });

  test('Escape puts back what was there', async () => {
    const { onCommit, field } = setup();
    await userEvent.type(field, ' bed{Escape}');
    expect(field).toHaveValue('Reed');
    await userEvent.tab();
    expect(onCommit).not.toHaveBeenCalled();
  });

  test('what is objected to is not taken over', async () => {
    const { onCommit, field } = setup();
    await userEvent.clear(field);
    expect(field).toHaveAccessibleDescription('A name is needed.');
    await userEvent.type(field, '{Enter}');
    await userEvent.tab();
    expect(onCommit).not.toHaveBeenCalled();
    expect(field).toHaveValue('Reed');
  });
});

describe('a number field', () => {
  function setup() {
    const onCommit = vi.fn();
    const limits = { min: 5, max: 200, step: 5 };
    render(<NumberField label="Window" unit="ms" value={40} onCommit={onCommit} {...limits} />);
    return { onCommit, field: screen.getByRole('spinbutton', { name: 'Window' }) };
  }

  test('says its value with its unit and its limits', () => {
    const { field } = setup();
    expect(field).toHaveAttribute('aria-valuetext', '40 ms');
    expect(field).toHaveAttribute('aria-valuemax', '200');
  });

  test.each([
    ['45{Enter}', 45],
    ['47{Enter}', 47],
    ['62,5{Tab}', 62.5],
    ['40{ArrowUp}', 45],
    ['40{ArrowDown}', 35],
    ['40{Shift>}{ArrowUp}{/Shift}', 90],
    ['199{ArrowUp}', 200],
  ])('%o commits %d', async (keys, expected) => {
    const { onCommit, field } = setup();
    await userEvent.clear(field);
    await userEvent.type(field, keys);
    expect(onCommit.mock.calls).toEqual([[expected]]);
  });

  test('what is out of its limits is said and not taken over', async () => {
    const { onCommit, field } = setup();
    await userEvent.clear(field);
    await userEvent.type(field, '500{Enter}');
    expect(field).toHaveAccessibleDescription('From 5 to 200.');
    await userEvent.tab();
    expect(onCommit).not.toHaveBeenCalled();
    expect(field).toHaveValue('40');
  });
});

describe('a slider', () => {
  test('previews while it moves and commits once', () => {
    const onCommit = vi.fn();
    const onPreview = vi.fn();
    render(
      <Slider
        label="Window"
        unit="ms"
        value={40}
        min={5}
        max={200}
        step={5}
        onCommit={onCommit}
        onPreview={onPreview}
      />,
    );
    const slider = screen.getByRole('slider', { name: 'Window' });
    fireEvent.change(slider, { target: { value: '45' } });
    fireEvent.change(slider, { target: { value: '50' } });
    expect(onPreview.mock.calls).toEqual([[45], [50]]);
    expect(screen.getByRole('spinbutton')).toHaveValue('50');
    expect(onCommit).not.toHaveBeenCalled();
    fireEvent.pointerUp(slider);
    fireEvent.blur(slider);
    expect(onCommit.mock.calls).toEqual([[50]]);
    expect(onPreview).toHaveBeenLastCalledWith(null);
  });

  test('after Escape the thumb that is still held moves nothing, the next move does', () => {
    const onCommit = vi.fn();
    const onPreview = vi.fn();
    render(
      <Slider
        label="Window"
        value={40}
        min={5}
        max={200}
        step={5}
        onCommit={onCommit}
        onPreview={onPreview}
      />,
    );
    const slider = screen.getByRole('slider', { name: 'Window' });
    const to = (value: string) => fireEvent.change(slider, { target: { value } });
    fireEvent.pointerDown(slider);
    to('90');
    expect(fireEvent.keyDown(slider, { key: 'Escape' })).toBe(false);
    to('95');
    fireEvent.keyUp(slider, { key: 'Escape' });
    to('100');
    fireEvent.pointerUp(slider);
    expect(slider).toHaveValue('40');
    expect(onPreview.mock.calls).toEqual([[90], [null]]);
    expect(onCommit).not.toHaveBeenCalled();
    fireEvent.keyDown(slider, { key: 'ArrowRight' });
    to('45');
    fireEvent.keyUp(slider, { key: 'ArrowRight' });
    expect(onCommit.mock.calls).toEqual([[45]]);
  });

  test('Escape gives the move up', () => {
    const onCommit = vi.fn();
    render(<Slider label="Window" value={40} min={5} max={200} step={5} onCommit={onCommit} />);
    const slider = screen.getByRole('slider', { name: 'Window' });
    fireEvent.change(slider, { target: { value: '90' } });
    fireEvent.keyDown(slider, { key: 'Escape' });
    fireEvent.pointerUp(slider);
    expect(slider).toHaveValue('40');
    expect(onCommit).not.toHaveBeenCalled();
  });
});
