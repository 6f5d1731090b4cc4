import { textOptions } from '../../../../store/text-options.ts';
import { useTypist } from '../../../../store/typist.ts';
import { NumberField } from '../../../widgets/number-field.tsx';
import { Select } from '../../../widgets/select.tsx';
import styles from './accidents.module.css';
import { kindOfSpeed, SPREADS, speedOfKind, speedOptions, spreadChoice, WPM_LIMITS } from './typist-words.ts';

/** Whose typing it is, and what they type. */
export function TypistFields() {
  const {
    speed,
    person,
    measured,
    typed,
    wish,
    ofDesign,
    hasOwnText,
    setSpeed,
    setText,
    spreadFactor,
    setSpread,
  } = useTypist();
  const { wpm } = person.parameters;
  const kind = kindOfSpeed(speed);
  return (
    <div className={styles.fields}>
      <Select
        label="Typist"
        value={kind}
        options={speedOptions(measured !== null || kind === 'measured')}
        onChange={(next) => setSpeed(speedOfKind(next, wpm))}
      />
      {kind === 'exact' && (
        <NumberField
          label="Speed"
          unit="words a minute"
          value={Math.round(wpm)}
          {...WPM_LIMITS}
          onCommit={setSpeed}
        />
      )}
      {kind !== 'measured' && (
        <Select
          label="Keys of a chord come"
          value={spreadChoice(spreadFactor)}
          options={SPREADS}
          onChange={(factor) => setSpread(Number(factor))}
        />
      )}
      <Select label="Text" value={wish} options={textOptions(hasOwnText, ofDesign)} onChange={setText} />
      {typed.why !== undefined && <p className={styles.problem}>{typed.why}</p>}
    </div>
  );
}
