import type { KeyboardEvent, MouseEvent, RefObject } from 'react';
import { keyName } from '../../core/board/key-name.ts';
import { neighbourOf } from '../../core/board/neighbours.ts';
import { bindingAt } from '../../core/keymap/lookup.ts';
import type { KeyId } from '../../core/keymap/types.ts';
import { useBench } from '../../store/bench.ts';
import { targetOf } from './drop-id.ts';
import { commandOf, type KeyCommand } from './key-command.ts';
import { elementOfKey } from './key-element.ts';

/** What the board does beyond the store: moving the focus, and saying aloud what came of a press. */
export interface BoardVoice {
  /** Opens a card; `takeFocus` when it was asked for by keyboard. */
  readonly opening: (takeFocus: boolean) => void;
  readonly say: (text: string) => void;
}

/** Handlers for clicks and presses on keys and tags of the board. */
export function useBoardCommands(svg: RefObject<SVGSVGElement | null>, voice: BoardVoice) {
  return {
    onClick: (event: MouseEvent<SVGSVGElement>) => clicked(event, voice),
    onKeyDown: (event: KeyboardEvent<SVGSVGElement>) => {
      if (!(event.target instanceof Element)) return;
      const key = event.target.getAttribute('data-key');
      const chord = event.target.getAttribute('data-chord');
      if (chord !== null) pressedOnTag(event, chord, voice);
      if (key === null) return;
      const command = commandOf(partsOf(event), useBench.getState().carried !== null);
      if (command === null) return;
      event.preventDefault();
      event.stopPropagation();
      obey(command, key, svg.current, voice);
    },
  };
}

function partsOf(event: KeyboardEvent) {
  const { key, ctrlKey, metaKey, altKey, shiftKey } = event;
  const { isComposing } = event.nativeEvent;
  return {
    key,
    ctrlKey,
    metaKey,
    altKey,
    shiftKey,
    isComposing,
    altGraph: event.getModifierState('AltGraph'),
  };
}

/** A click puts down what is carried, with Shift selects, and else opens the card of what it met. */
function clicked(event: MouseEvent<SVGSVGElement>, voice: BoardVoice): void {
  if (!(event.target instanceof Element)) return;
  const bench = useBench.getState();
  const chord = event.target.closest('[data-chord]')?.getAttribute('data-chord');
  if (chord !== null && chord !== undefined) {
    voice.opening(event.detail === 0);
    bench.openCardOf({ card: 'chord', chord });
    return;
  }
  const target = targetOf(event.target);
  if (target === null) return;
  if (bench.carried !== null) putDown(target.key, target.side, voice);
  else if (event.shiftKey) bench.selectKeys([target.key], 'toggle');
  else openKey(target.key, false, voice);
}

function openKey(key: KeyId, takeFocus: boolean, voice: BoardVoice): void {
  voice.opening(takeFocus);
  useBench.getState().openCardOf({ card: 'key', key });
}

function obey(command: KeyCommand, key: KeyId, svg: SVGSVGElement | null, voice: BoardVoice): void {
  if (command.command === 'walk') walk(svg, key, command.direction, voice);
  if (command.command === 'open') openKey(key, true, voice);
  if (command.command === 'put') putDown(key, command.side, voice);
  if (command.command === 'select') useBench.getState().selectKeys([key], 'toggle');
  if (command.command === 'bind') bind(key, command.char, voice);
  if (command.command === 'unbind') unbind(key, voice);
  if (command.command === 'leave') leave();
}

function bind(key: KeyId, char: string, voice: BoardVoice): void {
  const { edit, frontLayer, keymap } = useBench.getState();
  edit({ edit: 'bind', place: { layer: frontLayer, key }, side: 'tap', action: { do: 'char', char } });
  if (useBench.getState().keymap !== keymap) voice.say(`${char} on ${keyName(keymap.board, key)}`);
}

function unbind(key: KeyId, voice: BoardVoice): void {
  const { edit, frontLayer, keymap } = useBench.getState();
  const place = { layer: frontLayer, key };
  if (bindingAt(keymap, place) === undefined) return;
  edit({ edit: 'unbind', place });
  if (useBench.getState().keymap !== keymap) voice.say(`${keyName(keymap.board, key)} cleared`);
}

function putDown(key: KeyId, side: 'tap' | 'hold', voice: BoardVoice): void {
  const { carried, keymap, putDown: put } = useBench.getState();
  put({ key, side });
  if (carried !== null) voice.say(`${carried.label} put on ${keyName(keymap.board, key)}, ${side}`);
}

type Step = Extract<KeyCommand, { command: 'walk' }>['direction'];

function walk(svg: SVGSVGElement | null, key: KeyId, direction: Step, voice: BoardVoice): void {
  const { keymap, openCard, openCardOf } = useBench.getState();
  const next = neighbourOf(keymap.board, key, direction);
  if (next === null) return;
  elementOfKey(svg, next)?.focus();
  // An open card goes along, the focus stays on the board.
  if (openCard?.card !== 'key') return;
  voice.opening(false);
  openCardOf({ card: 'key', key: next });
}

/** Escape lets go of one thing at a time: what is carried, the card, the selection, the light. */
function leave(): void {
  const { carried, carry, openCard, openCardOf, selectedKeys, selectKeys, light } = useBench.getState();
  if (carried !== null) carry(null);
  else if (openCard !== null) openCardOf(null);
  else if (selectedKeys.length > 0) selectKeys([], 'only');
  else light(null);
}

/** Arrows walk the tags in the chords' order, Enter and Space open the chord's card. */
function pressedOnTag(event: KeyboardEvent<SVGSVGElement>, chord: string, voice: BoardVoice): void {
  const tags = [...event.currentTarget.querySelectorAll<SVGElement>('[data-chord]')];
  const at = tags.findIndex((tag) => tag.getAttribute('data-chord') === chord);
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (step !== undefined) {
    event.preventDefault();
    tags.at((at + step) % tags.length)?.focus();
  }
  if (event.key !== 'Enter' && event.key !== ' ') return;
  event.preventDefault();
  voice.opening(true);
  useBench.getState().openCardOf({ card: 'chord', chord });
}
