import { useMemo } from 'react';
import { useAnalysis } from '../../../store/analysis.ts';
import { useBench } from '../../../store/bench.ts';
import { bestMatches } from '../../widgets/best-matches.ts';
import { type Findable, Finder } from '../../widgets/finder.tsx';
import { foundLayers, foundNeeds } from './findables.ts';

/** As many as anybody reads; a better word finds the rest. */
const SHOWN = 60;

/** Finds any command, layer or need by a part of its name. */
export function FinderDialog({
  commands,
  onClose,
}: {
  readonly commands: readonly Findable[];
  readonly onClose: () => void;
}) {
  const { needs } = useAnalysis();
  const layers = useBench((bench) => bench.keymap.layers);
  const { carry, light, showLayer } = useBench.getState();
  const all = useMemo(
    () => [...commands, ...foundLayers(layers, showLayer), ...foundNeeds(needs, { carry, light })],
    [commands, layers, needs, showLayer, carry, light],
  );
  return (
    <Finder
      title="Find a command, a layer or a need"
      find={(query) => bestMatches(all, query, SHOWN)}
      onClose={onClose}
    />
  );
}
