import { useState } from 'react';
import type { NeedProgress } from '../../../core/practice/progress.ts';
import type { RankedNeed } from '../../../core/practice/ranked-needs.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import { needSections } from './need-sections.ts';
import styles from './needs-side.module.css';
import {
  count,
  dueWords,
  type NeedSign,
  STANDING_TITLES,
  shareWords,
  signOf,
  timeWords,
} from './practise-words.ts';
import type { Room } from './use-room.ts';

/** Left of the board: the needs by how they stand, and all that is known of the one that is looked at. */
export function NeedsSide({
  room,
  ranked,
  asked,
}: {
  readonly room: Room;
  readonly ranked: readonly RankedNeed[];
  /** The need that a running session asks for. */
  readonly asked: string | null;
}) {
  const [chosen, choose] = useState<string | null>(null);
  const group = usePractice((state) => state.choices.group);
  const looked = ranked.find(({ text }) => text === chosen);
  return (
    <div className={styles.side}>
      <div className={styles.lists}>
        {ranked.length === 0 && (
          <p className={styles.quiet}>
            What there is to learn stands here once the design types some of its needs.
          </p>
        )}
        {needSections(ranked, group).map(({ title, needs }) => (
          <section key={title} aria-label={title}>
            <h2 className={styles.heading}>
              {title} <span className={styles.quiet}>{needs.length}</span>
            </h2>
            <div className={styles.chips}>
              {needs.map(({ text }) => (
                <Chip
                  key={text}
                  sign={signOf(text, room.keymap, room.host)}
                  isAsked={text === asked}
                  isChosen={text === chosen}
                  onChoose={() => choose(text === chosen ? null : text)}
                />
              ))}
            </div>
          </section>
        ))}
      </div>
      {looked !== undefined && <NeedDetail room={room} need={looked} />}
    </div>
  );
}

/** A chip with more letters than fit into half of the list takes a line of its own. */
const MOST_LETTERS = 13;

function Chip(props: {
  readonly sign: NeedSign;
  readonly isAsked: boolean;
  readonly isChosen: boolean;
  readonly onChoose: () => void;
}) {
  const { glyph, name, isWord } = props.sign;
  return (
    <button
      type="button"
      className={styles.chip}
      data-word={isWord}
      data-long={glyph.length > MOST_LETTERS}
      data-asked={props.isAsked}
      aria-pressed={props.isChosen}
      aria-label={name}
      onClick={props.onChoose}
    >
      {glyph}
    </button>
  );
}

function NeedDetail({ room, need }: { readonly room: Room; readonly need: RankedNeed }) {
  const { name } = signOf(need.text, room.keymap, room.host);
  const words = room.ways.of(need.text)?.known.words ?? '';
  const { progress } = need;
  return (
    <section className={styles.detail} aria-label={`About ${name}`}>
      <h2 className={styles.name}>
        {name} <span className={styles.quiet}>{STANDING_TITLES[need.standing]}</span>
      </h2>
      {progress?.moved && (
        <p>
          <span className={styles.quiet}>Was:</span> {progress.moved.from.words}
        </p>
      )}
      <p>
        {progress?.moved && <span className={styles.quiet}>Now: </span>}
        {words}
      </p>
      {progress === undefined || progress.attempts === 0 ? (
        <p className={styles.quiet}>Not practised here yet.</p>
      ) : (
        <Figures progress={progress} />
      )}
    </section>
  );
}

function Figures({ progress }: { readonly progress: NeedProgress }) {
  return (
    <dl className={styles.figures}>
      <dt>Tries</dt>
      <dd>
        {count(progress.attempts, 'try', 'tries')}, {progress.errors} wrong at first
      </dd>
      <dt>Lately</dt>
      <dd>{shareWords(progress.errorShare)}</dd>
      <dt>Median</dt>
      <dd>{timeWords(progress.median)}</dd>
      <dt>9 in 10 within</dt>
      <dd>{timeWords(progress.ninetieth)}</dd>
      <dt>Comes again</dt>
      <dd>{dueWords(progress.card, Date.now())}</dd>
    </dl>
  );
}
