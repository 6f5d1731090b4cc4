import type { Rule } from './rule.ts';
import { capsOverlap } from './rules/caps-overlap.ts';
import { characterWithoutRoute } from './rules/character-without-route.ts';
import { chordFiresWhileTyping } from './rules/chord-fires-while-typing.ts';
import { chordInsideChord } from './rules/chord-inside-chord.ts';
import { chordNeverFires } from './rules/chord-never-fires.ts';
import { chordTooWideForHand } from './rules/chord-too-wide-for-hand.ts';
import { chordUsesHoldTap } from './rules/chord-uses-hold-tap.ts';
import { chordWantsOneFingerTwice } from './rules/chord-wants-one-finger-twice.ts';
import { chordWindowOutsideHands } from './rules/chord-window-outside-hands.ts';
import { chordWindowUnderYourSpread } from './rules/chord-window-under-your-spread.ts';
import { chordsWithSameKeys } from './rules/chords-with-same-keys.ts';
import { diaryNoteOpen } from './rules/diary-note-open.ts';
import { keyOutOfReach } from './rules/key-out-of-reach.ts';
import { keyUnreachable } from './rules/key-unreachable.ts';
import { keyWithoutBinding } from './rules/key-without-binding.ts';
import { layerNeverEntered } from './rules/layer-never-entered.ts';
import { layerWithoutWayBack } from './rules/layer-without-way-back.ts';
import { letterAppearsLate } from './rules/letter-appears-late.ts';
import { letterHoldMisfires } from './rules/letter-hold-misfires.ts';
import { letterHoldUnprotected } from './rules/letter-hold-unprotected.ts';
import { modifierMissing } from './rules/modifier-missing.ts';
import { needBoundManyTimes } from './rules/need-bound-many-times.ts';
import { needClumsy } from './rules/need-clumsy.ts';
import { needListUnknown } from './rules/need-list-unknown.ts';
import { needMissing } from './rules/need-missing.ts';
import { referenceBroken } from './rules/reference-broken.ts';
import { waiverNotNeeded } from './rules/waiver-not-needed.ts';

/** Every rule, sorted by its id. A new rule is a file in rules/, a test of the same name, and a line here. */
export const RULES: readonly Rule[] = [
  capsOverlap,
  characterWithoutRoute,
  chordFiresWhileTyping,
  chordInsideChord,
  chordNeverFires,
  chordTooWideForHand,
  chordUsesHoldTap,
  chordWantsOneFingerTwice,
  chordWindowOutsideHands,
  chordWindowUnderYourSpread,
  chordsWithSameKeys,
  diaryNoteOpen,
  keyOutOfReach,
  keyUnreachable,
  keyWithoutBinding,
  layerNeverEntered,
  layerWithoutWayBack,
  letterAppearsLate,
  letterHoldMisfires,
  letterHoldUnprotected,
  modifierMissing,
  needBoundManyTimes,
  needClumsy,
  needListUnknown,
  needMissing,
  referenceBroken,
  waiverNotNeeded,
];
