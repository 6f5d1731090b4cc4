import { usePageVersion } from './page-version.ts';

/** How often a page that stays open asks whether there is a newer version, ms. */
const ASK_EVERY_MS = 60 * 60 * 1000;

/**
 * Has the browser keep the page, so that it opens without a network, and tells `usePageVersion` of newer versions.
 * `beforeNew` is waited for before a newer version takes over, so that nothing is lost; `reopen` loads the page anew.
 */
export async function keepPage(
  container: ServiceWorkerContainer | undefined,
  { beforeNew, reopen }: { readonly beforeNew: () => Promise<void>; readonly reopen: () => void },
): Promise<void> {
  if (container === undefined) return usePageVersion.setState({ state: 'not kept' });
  let isWanted = false;
  const use = (worker: ServiceWorker) => async () => {
    isWanted = true;
    await beforeNew();
    worker.postMessage('use now');
  };
  const offer = (worker: ServiceWorker | null) => {
    // Without one in force this is the first visit: what is installed then is the version on the screen.
    if (worker === null || container.controller === null) return;
    const start = use(worker);
    usePageVersion.setState({ newer: { use: () => void start() } });
  };
  let hadController = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    if (isWanted) reopen();
    else if (hadController) usePageVersion.setState({ newer: null, isOutdated: true });
    hadController = true;
  });
  try {
    const registration = await container.register('./service-worker.js', { updateViaCache: 'none' });
    offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const { installing } = registration;
      installing?.addEventListener(
        'statechange',
        () => installing.state === 'installed' && offer(installing),
      );
    });
    setInterval(() => void registration.update().catch(() => undefined), ASK_EVERY_MS);
    await container.ready;
    usePageVersion.setState({ state: 'kept' });
  } catch {
    usePageVersion.setState({ state: 'not kept' });
  }
}
