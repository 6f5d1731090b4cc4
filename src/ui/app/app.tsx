import { memo, Suspense, useCallback, useEffect, useState } from 'react';
import { useBench } from '../../store/bench.ts';
import { carryKeys } from '../../store/carry-keys.ts';
import { designs, saveBeforeLeaving, useDesigns } from '../../store/keeping/use-designs.ts';
import { usePage } from '../../store/page.ts';
import { followSettings, useSettings } from '../../store/settings/use-settings.ts';
import styles from './app.module.css';
import { Banner } from './banner.tsx';
import { DESKS, deskOf } from './desks.ts';
import { ErrorBoundary } from './error-boundary.tsx';
import { foundDeskCommands, foundDesks } from './finder/desk-commands.ts';
import { foundCommands } from './finder/findables.ts';
import { Header } from './header.tsx';
import { designItems, moreItems } from './menus.ts';
import { Notices } from './notices.tsx';
import { OpenDialog, type OpenDialogName } from './open-dialog.tsx';
import { useFilePicker } from './transfer/use-file-picker.ts';
import { useImport } from './transfer/use-import.ts';
import { useLinkedDesign } from './transfer/use-linked-design.ts';
import { useLook } from './use-look.ts';
import { useShortcuts } from './use-shortcuts.ts';

/** The whole page: header, what is to be said about keeping, the desk, and whatever lies over them. */
export function App() {
  const { desk: deskId, showDesk } = usePage();
  const [dialog, setDialog] = useState<OpenDialogName | null>(null);
  const theme = useSettings((settings) => settings.theme);
  const settle = useSettings((settings) => settings.settle);
  useLook();
  const importing = useImport();
  const pickFile = useFilePicker('.json,application/json', importing.importFile);
  const status = useDesigns((state) => state.status);
  useLinkedDesign(status === 'ready', importing.showProblem);
  const kept = useDesigns((state) => state.designs);
  const openId = useBench((bench) => bench.designId);
  const name = useBench((bench) => bench.keymap.name);
  useShortcuts(useCallback(() => setDialog('find'), []));
  useEffect(() => {
    void designs.getState().start();
    const stops = [saveBeforeLeaving(window), followSettings(window), carryKeys()];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
  useEffect(() => {
    document.title = status === 'ready' ? `${name} – Handful` : 'Handful';
  }, [name, status]);
  if (status === 'opening') return <p className={styles.opening}>Opening the design…</p>;
  const openDesign = designs.getState().openDesign;
  const inDesigns = designItems({ kept, openId, open: setDialog, pickFile, openDesign });
  const inMore = moreItems({ theme, setTheme: (next) => settle({ theme: next }), open: setDialog });
  const exporting = { label: 'Export…', onSelect: () => setDialog('export') };
  return (
    <div className={styles.app}>
      <Header
        desks={DESKS}
        desk={deskId}
        onDesk={showDesk}
        designItems={inDesigns}
        moreItems={inMore}
        onExport={() => setDialog('export')}
      />
      <Banner />
      <ErrorBoundary key={openId}>
        <Suspense fallback={<p className={styles.opening}>Setting up the desk…</p>}>
          <OpenDesk id={deskId} />
        </Suspense>
      </ErrorBoundary>
      <OpenDialog
        name={dialog}
        open={setDialog}
        importing={importing}
        pickFile={pickFile}
        commands={[
          ...foundDesks(DESKS),
          ...foundDeskCommands(),
          ...foundCommands([exporting, ...inDesigns], 'designs'),
          ...foundCommands(inMore, 'page'),
        ]}
      />
      {importing.isOver && <div className={styles.over}>Let go to import the keymap</div>}
      <Notices />
    </div>
  );
}

/** The desk alone: what stands around it is drawn anew with every saving and every dialog, the desk need not be. */
const OpenDesk = memo(function OpenDesk({ id }: { readonly id: string }) {
  const Desk = deskOf(id)?.Desk;
  return Desk === undefined ? null : <Desk />;
});
