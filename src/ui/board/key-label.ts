import { keyName } from '../../core/board/key-name.ts';
import { actionInWords, chordDoes, type LegendSource, tapInWords } from '../../core/host/legend.ts';
import { bindingOn } from '../../core/keymap/lookup.ts';
import { openNotesAbout } from '../../core/keymap/open-notes.ts';
import { chordsOf, layersOfChord } from '../../core/keymap/timing.ts';
import type { Binding, Chord, KeyId } from '../../core/keymap/types.ts';
import type { KeySceneSource } from './key-scene.ts';

/**
 * What is read out of a key: "right index home, Base: J; held: Left Shift; chord Tab with right middle home". Of
 * the layers only the one in front; chords that are live on it.
 */
export function keyLabel(key: KeyId, source: KeySceneSource): string {
  const { keymap, frontLayer } = source;
  const front = keymap.layers.find((layer) => layer.id === frontLayer);
  const binding = front && bindingOn(front, key);
  const onLayer = `${keyName(keymap.board, key)}, ${front?.name ?? frontLayer}: ${bindingInWords(binding, source)}`;
  const chords = chordsOf(keymap).filter(
    (chord) => chord.keys.includes(key) && layersOfChord(keymap, chord).includes(frontLayer),
  );
  const notes = openNotesAbout(keymap, key).map(({ text }) => `noted: ${text}`);
  return [onLayer, ...chords.map((chord) => chordInWords(chord, key, source)), ...notes].join('; ');
}

/** A binding in words: "J; held: Left Shift", "held: layer Symbols while held", "falls through". */
export function bindingInWords(binding: Binding | undefined, source: LegendSource): string {
  if (binding === undefined) return 'falls through';
  const parts = [];
  if (binding.tap !== undefined) parts.push(tapInWords(binding.tap, binding.onShift, source));
  if (binding.hold !== undefined) parts.push(`held: ${actionInWords(binding.hold, source)}`);
  return parts.join('; ');
}

function chordInWords(chord: Chord, key: KeyId, source: KeySceneSource): string {
  const others = chord.keys.filter((each) => each !== key).map((each) => keyName(source.keymap.board, each));
  return `chord ${chordDoes(chord, source)} with ${others.join(', ')}`;
}
