import { keyName } from '../../../core/board/key-name.ts';
import type { Finding } from '../../../core/findings/find.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { bindingOn } from '../../../core/keymap/lookup.ts';
import type { KeyId, Keymap, Layer } from '../../../core/keymap/types.ts';
import type { NeedRoute } from '../../../core/routes/types.ts';
import type { Carried, Lit } from '../../../store/bench-state.ts';
import { bindingInWords } from '../../board/key-label.ts';
import { actionOfNeed } from '../../desks/design/needs/action-of-need.ts';
import { needRows } from '../../desks/design/needs/need-rows.ts';
import { layerOfFinding, litByFinding, litByRoute } from '../../desks/design/route-lit.ts';
import type { Findable } from '../../widgets/finder.tsx';
import type { MenuItem } from '../../widgets/menu.tsx';

/** The commands of a menu that can be given now. */
export function foundCommands(items: readonly MenuItem[], hint: string): readonly Findable[] {
  return items.flatMap((item) =>
    item === 'line' || item.disabled
      ? []
      : [{ id: `${hint} ${item.key ?? item.label}`, label: item.label, hint, onChoose: item.onSelect }],
  );
}

/** The layers, to bring them to the front. */
export function foundLayers(layers: readonly Layer[], show: (id: string) => void): readonly Findable[] {
  return layers.map(({ id, name }) => ({
    id: `layer ${id}`,
    label: name,
    hint: 'layer, to the front',
    onChoose: () => show(id),
  }));
}

/** The needs: one that is chosen is in hand, to be put on a key, and the way to type it lights up. */
export function foundNeeds(
  needs: readonly NeedRoute[],
  bench: { readonly carry: (what: Carried) => void; readonly light: (lit: Lit | null) => void },
): readonly Findable[] {
  return needRows(needs).map(({ need, text, name, status, cost, route }) => ({
    id: `need ${text}`,
    label: name,
    hint: status === 'missing' ? 'need, missing' : `need, ${cost}`,
    onChoose: () => {
      bench.light(route === null ? null : litByRoute(route, name));
      bench.carry({ carry: 'action', action: actionOfNeed(need), label: name });
    },
  }));
}

/** The keys by what they are called and what they do on the layer in front; one that is chosen opens its card. */
export function foundKeys(
  keymap: Keymap,
  host: HostLayout,
  frontLayer: string,
  open: (key: KeyId) => void,
): readonly Findable[] {
  const front = keymap.layers.find((layer) => layer.id === frontLayer);
  return keymap.board.keys.map(({ id }) => {
    const does = bindingInWords(front && bindingOn(front, id), { keymap, host });
    return {
      id: `key ${id}`,
      label: keyName(keymap.board, id),
      also: does,
      hint: `key, ${does}`,
      onChoose: () => open(id),
    };
  });
}

/** The findings; one that is chosen lights up what it is about. */
export function foundFindings(
  findings: readonly Finding[],
  keymap: Keymap,
  bench: { readonly light: (lit: Lit | null) => void; readonly showLayer: (layer: string) => void },
): readonly Findable[] {
  return findings.map((finding) => ({
    id: `finding ${finding.rule} ${finding.message}`,
    label: finding.message,
    also: finding.rule,
    hint: `finding, ${finding.severity}`,
    onChoose: () => {
      const layer = layerOfFinding(finding, keymap);
      if (layer !== null) bench.showLayer(layer);
      bench.light(litByFinding(finding, keymap));
    },
  }));
}
