import { chordsOf, timingOf } from '../../../../core/keymap/timing.ts';
import type { HoldBy } from '../../../../core/keymap/types.ts';
import { ms, type Names } from '../../../../core/rehearse/key-words.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { useTried } from '../../../../store/rehearse/use-runs.ts';
import { NumberField } from '../../../widgets/number-field.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import styles from '../rehearse.module.css';
import { HOLD_BY_WORDS, holdTapsOf, timingEverywhere, windowEverywhere } from './settings-edits.ts';
import { Tries } from './tries.tsx';

const LIMITS = { min: 0, max: 2000, step: 5 } as const;

const HOLD_BY: readonly { readonly value: HoldBy; readonly label: string }[] = [
  { value: 'time-only', label: HOLD_BY_WORDS['time-only'] },
  { value: 'press-inside', label: HOLD_BY_WORDS['press-inside'] },
  { value: 'tap-inside', label: HOLD_BY_WORDS['tap-inside'] },
];

/** The same presses at other settings; nothing of it is in the design until it is kept. */
export function SettingsPanel({ names }: { readonly names: Names }) {
  return (
    <>
      <p className={styles.hint}>
        Each change is tried on the presses of the time line at once, and stays off the design until you keep
        it.
      </p>
      <Tries />
      <HoldSettings names={names} />
      <ChordSettings names={names} />
    </>
  );
}

function HoldSettings({ names }: { readonly names: Names }) {
  const { keymap } = useTried();
  const tryOut = useRehearsal((state) => state.tryOut);
  const timing = timingOf(keymap);
  const holdTaps = holdTapsOf(keymap);
  if (holdTaps.length === 0)
    return <p className={styles.hint}>This design has no key with a tap and a hold.</p>;
  const everywhere = (change: Parameters<typeof timingEverywhere>[1], words: string) =>
    tryOut({ title: words, edit: timingEverywhere(keymap, change, words) });
  return (
    <section className={styles.panelPart}>
      <h2 className={styles.heading}>Keys with a tap and a hold, all of them</h2>
      <div className={styles.pair}>
        <NumberField
          label="Hold after"
          unit="ms"
          value={timing.holdAfterMs}
          {...LIMITS}
          onCommit={(value) => everywhere({ holdAfterMs: value }, `Hold after ${ms(value)} everywhere`)}
        />
        <NumberField
          label="Quiet before"
          unit="ms"
          value={timing.quietBeforeMs}
          {...LIMITS}
          onCommit={(value) => everywhere({ quietBeforeMs: value }, `Quiet before ${ms(value)} everywhere`)}
        />
        <NumberField
          label="Again within"
          unit="ms"
          value={timing.againWithinMs}
          {...LIMITS}
          onCommit={(value) => everywhere({ againWithinMs: value }, `Again within ${ms(value)} everywhere`)}
        />
        <Select
          label="Hold by"
          value={timing.holdBy}
          options={HOLD_BY}
          onChange={(value) => everywhere({ holdBy: value }, `Hold by ${HOLD_BY_WORDS[value]} everywhere`)}
        />
      </div>
      <Switch
        label="Same hand taps"
        on={timing.sameHandTaps}
        onChange={(on) =>
          everywhere({ sameHandTaps: on }, on ? 'Same hand taps everywhere' : 'Same hand does not tap')
        }
      />
      <Switch
        label="Tap if alone"
        on={timing.tapIfAlone}
        onChange={(on) =>
          everywhere({ tapIfAlone: on }, on ? 'Tap if alone everywhere' : 'No tap for being alone')
        }
      />
      <h2 className={styles.heading}>One by one: hold after</h2>
      <div className={styles.pair}>
        {holdTaps.map(({ place, binding }) => (
          <NumberField
            key={`${place.layer} ${place.key}`}
            label={
              place.layer === keymap.layers[0]?.id
                ? names.key(place.key)
                : `${names.key(place.key)} on ${names.layer(place.layer)}`
            }
            unit="ms"
            value={timingOf(keymap, binding).holdAfterMs}
            {...LIMITS}
            onCommit={(holdAfterMs) =>
              tryOut({
                title: `${names.key(place.key)}: hold after ${ms(holdAfterMs)}`,
                edit: { edit: 'set-binding-timing', place, timing: { holdAfterMs } },
              })
            }
          />
        ))}
      </div>
    </section>
  );
}

function ChordSettings({ names }: { readonly names: Names }) {
  const { keymap } = useTried();
  const tryOut = useRehearsal((state) => state.tryOut);
  const chords = chordsOf(keymap);
  const [first] = chords;
  if (first === undefined) return <p className={styles.hint}>This design has no chord.</p>;
  return (
    <section className={styles.panelPart}>
      <h2 className={styles.heading}>Windows of chords</h2>
      {chords.length > 1 && (
        <NumberField
          label="All of them"
          unit="ms"
          value={first.windowMs}
          {...LIMITS}
          onCommit={(value) => {
            const title = `Window of every chord: ${ms(value)}`;
            tryOut({ title, edit: windowEverywhere(keymap, value, title) });
          }}
        />
      )}
      <div className={styles.pair}>
        {chords.map(({ id, windowMs }) => (
          <NumberField
            key={id}
            label={names.chord(id)}
            unit="ms"
            value={windowMs}
            {...LIMITS}
            onCommit={(value) =>
              tryOut({
                title: `Window of ${names.chord(id)}: ${ms(value)}`,
                edit: { edit: 'change-chord', chord: id, to: { windowMs: value } },
              })
            }
          />
        ))}
      </div>
    </section>
  );
}
