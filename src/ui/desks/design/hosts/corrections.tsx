import { codeName } from '../../../../core/host/code-names.ts';
import { tableGives } from '../../../../core/host/corrected-host.ts';
import type { Host } from '../../../../core/keymap/types.ts';
import { useHostLayout } from '../../../../store/hosts.ts';
import { Badge } from '../../../widgets/badge.tsx';
import { Button } from '../../../widgets/button.tsx';
import { Disclosure } from '../../../widgets/disclosure.tsx';
import { CorrectionForm } from './correction-form.tsx';
import { corrected, uncorrected } from './host-edits.ts';
import { givesWords, levelWords } from './host-words.ts';
import styles from './hosts.module.css';

/** The single keys that a computer reads otherwise than its table says. */
export function Corrections({
  hosts,
  at,
  host,
  onChange,
}: {
  readonly hosts: readonly Host[];
  readonly at: number;
  readonly host: Host;
  readonly onChange: (hosts: readonly Host[]) => void;
}) {
  const { table } = useHostLayout({ layout: host.layout, variant: host.variant });
  const corrections = host.corrections ?? [];
  return (
    <Disclosure
      title="Single keys that this computer reads otherwise"
      badge={corrections.length > 0 ? <Badge>{corrections.length}</Badge> : undefined}
      startOpen={corrections.length > 0}
    >
      {corrections.length > 0 && (
        <div className={styles.tableFrame}>
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">Key</th>
                <th scope="col">Gives</th>
                <th scope="col">The table says</th>
                <th scope="col">
                  <span className={styles.unseen}>Take back</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {corrections.map((one) => {
                const key = `${codeName(one.code)} ${levelWords(one.level, host.system)}`;
                return (
                  <tr key={key}>
                    <th scope="row">{key}</th>
                    <td>{givesWords(one.gives)}</td>
                    <td>{givesWords(tableGives(table, one.code, one.level))}</td>
                    <td>
                      <Button
                        tone="quiet"
                        aria-label={`Take back: ${key}`}
                        onClick={() => onChange(uncorrected(hosts, at, one))}
                      >
                        Take back
                      </Button>
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </div>
      )}
      <CorrectionForm
        table={table}
        system={host.system}
        onCorrect={(correction) => onChange(corrected(hosts, at, correction))}
      />
    </Disclosure>
  );
}
