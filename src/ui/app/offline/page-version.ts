import { create } from 'zustand';

/** How the page stands to the network. */
interface PageVersion {
  /** `kept`: it opens without a network; `not kept`: this browser or place cannot keep it. */
  readonly state: 'asking' | 'kept' | 'not kept';
  /** A newer version lies ready, and takes over when `use` is called; null where there is none. */
  readonly newer: { readonly use: () => void } | null;
  /** Another tab has taken up a newer version: this one is to be opened anew. */
  readonly isOutdated: boolean;
}

/** What is known about the version of the page; see `keepPage`. */
export const usePageVersion = create<PageVersion>()(() => ({
  state: 'asking',
  newer: null,
  isOutdated: false,
}));
