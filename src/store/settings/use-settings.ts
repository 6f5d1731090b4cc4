import { create } from 'zustand';
import { paperFor } from '../../core/board/paper.ts';
import { readSettings, type Settings } from './settings.ts';

const KEPT_AS = 'handful settings';
/** Where the theme was kept while it was the only setting. */
const THEME_KEPT_AS = 'handful theme';

interface SettingsState extends Settings {
  /** Settles something from now on and keeps it. */
  readonly settle: (change: Partial<Settings>) => void;
}

/** A browser may refuse to keep anything: then settings hold for as long as the page is open. */
function kept(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function keep(settings: Settings): void {
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(settings));
  } catch {
    // Nothing is lost but the memory of it.
  }
}

/** The settings of whoever sits at this browser. */
export const useSettings = create<SettingsState>()((set, get) => ({
  ...readSettings(kept(KEPT_AS), kept(THEME_KEPT_AS), paperFor(navigator.language)),
  settle: (change) => {
    set(change);
    const { settle: _, ...settings } = get();
    keep(settings);
  },
}));

/** Takes over what another tab settles. Hands back how to stop. */
export function followSettings(page: Window): () => void {
  const changed = ({ key, newValue }: StorageEvent) => {
    if (key === KEPT_AS && newValue !== null) useSettings.setState(readSettings(newValue));
  };
  page.addEventListener('storage', changed);
  return () => page.removeEventListener('storage', changed);
}
