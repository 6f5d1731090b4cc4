import type { KeptDesign } from '../../store/keeping/shelf.ts';
import type { Settings } from '../../store/settings/settings.ts';
import type { MenuItem } from '../widgets/menu.tsx';
import type { OpenDialogName } from './open-dialog.tsx';
import { copyLink } from './transfer/copy-link.ts';

/** How many of the kept designs stand in the menu itself. */
const RECENT = 6;

type Open = (name: OpenDialogName) => void;

/** The designs menu: new, import, the designs changed last, and the way to all of them. */
export function designItems(menu: {
  readonly kept: readonly KeptDesign[];
  readonly openId: string;
  readonly open: Open;
  readonly pickFile: () => void;
  readonly openDesign: (id: string) => Promise<void>;
}): readonly MenuItem[] {
  const recent = menu.kept.slice(0, RECENT).map((design) => ({
    key: design.id,
    label: design.name,
    checked: design.id === menu.openId,
    onSelect: () => {
      if (design.id !== menu.openId) void menu.openDesign(design.id);
    },
  }));
  return [
    { label: 'New design…', onSelect: () => menu.open('new') },
    { label: 'Import a file…', onSelect: menu.pickFile },
    'line',
    { label: 'Versions of this design…', onSelect: () => menu.open('versions') },
    { label: 'Copy a link to this design', onSelect: () => void copyLink() },
    'line',
    ...recent,
    'line',
    { label: 'All designs and demonstrations…', onSelect: () => menu.open('designs') },
  ];
}

const THEMES: readonly { readonly theme: Settings['theme']; readonly label: string }[] = [
  { theme: 'system', label: 'Light or dark as the computer is' },
  { theme: 'light', label: 'Light' },
  { theme: 'dark', label: 'Dark' },
];

/** The menu of what concerns the page and not the design. */
export function moreItems(menu: {
  readonly theme: Settings['theme'];
  readonly setTheme: (theme: Settings['theme']) => void;
  readonly open: Open;
}): readonly MenuItem[] {
  return [
    ...THEMES.map(({ theme, label }) => ({
      label,
      checked: theme === menu.theme,
      onSelect: () => menu.setTheme(theme),
    })),
    'line',
    { label: 'Settings…', onSelect: () => menu.open('settings') },
    { label: 'Backup…', onSelect: () => menu.open('backup') },
    { label: 'Find anything…', hint: 'Ctrl K', onSelect: () => menu.open('find') },
    { label: 'Help and keyboard…', onSelect: () => menu.open('help') },
  ];
}
