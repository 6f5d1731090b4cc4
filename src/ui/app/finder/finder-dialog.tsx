import { useMemo } from 'react';
import { useFindings } from '../../../store/accidents/use-accidents.ts';
import { useAnalysis } from '../../../store/analysis.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { bestMatches } from '../../widgets/best-matches.ts';
import { type Findable, Finder } from '../../widgets/finder.tsx';
import { showOnDesign } from './desk-commands.ts';
import { foundFindings, foundKeys, foundLayers, foundNeeds } from './findables.ts';

/** As many as anybody reads; a better word finds the rest. */
const SHOWN = 60;

/** Finds any command, desk, setting, layer, key, finding or need by a part of its name. */
export function FinderDialog({
  commands,
  onClose,
}: {
  readonly commands: readonly Findable[];
  readonly onClose: () => void;
}) {
  const things = useThings();
  const all = useMemo(() => [...commands, ...things], [commands, things]);
  return (
    <Finder
      title="Find anything"
      placeholder="Command, layer, key, finding, need"
      find={(query) => bestMatches(all, query, SHOWN)}
      onClose={onClose}
    />
  );
}

/** What of the open design can be found. Whatever is chosen is shown on the design desk. */
function useThings(): readonly Findable[] {
  const { needs } = useAnalysis();
  const findings = useFindings();
  const keymap = useBench((bench) => bench.keymap);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const { host } = useHost(keymap);
  return useMemo(() => {
    const bench = useBench.getState();
    const open = (key: string) => {
      bench.focusKey(key);
      bench.openCardOf({ card: 'key', key });
    };
    const found = [
      ...foundLayers(keymap.layers, bench.showLayer),
      ...foundKeys(keymap, host, frontLayer, open),
      ...foundFindings(findings, keymap, bench),
      ...foundNeeds(needs, bench),
    ];
    return found.map((each) => ({ ...each, onChoose: () => showOnDesign(each.onChoose) }));
  }, [needs, findings, keymap, frontLayer, host]);
}
