import { wpmOf } from '../../../core/typist/speed.ts';
import { useTypist } from '../../../store/typist.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import { assumptionsInWords } from '../accident-words.ts';
import styles from './cards.module.css';

/** Whose typing a card's figures are about, and what in them is an assumption. */
export function TypistLine({ what }: { readonly what: 'chord' | 'hold' }) {
  const { speed, person, measured, typed } = useTypist();
  const isMeasured = speed === 'measured' && measured !== null;
  const who = isMeasured
    ? 'You, as measured'
    : `${Math.round(wpmOf(speed) ?? person.parameters.wpm)} words a minute`;
  return (
    <Disclosure title={<span className={styles.default}>{`Estimated: ${who}, text “${typed.title}”`}</span>}>
      <ul className={styles.assumed}>
        {assumptionsInWords(what, isMeasured, person.spreadFactor).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        <li>
          Typist and text are chosen under “Accidents” beside the board.{' '}
          <a href="./typist.md" target="_blank" rel="noreferrer">
            What the figures are worth
          </a>
        </li>
      </ul>
    </Disclosure>
  );
}
