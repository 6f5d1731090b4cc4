import { useLayoutEffect } from 'react';
import type { Settings } from '../../store/settings/settings.ts';
import { useSettings } from '../../store/settings/use-settings.ts';
import { useMedia } from '../widgets/use-media.ts';

/** Which of the two looks a choice comes to. */
export function themeOf(choice: Settings['theme'], computerIsDark: boolean): 'light' | 'dark' {
  if (choice === 'system') return computerIsDark ? 'dark' : 'light';
  return choice;
}

/** Puts the chosen look and the chosen stillness on the page. */
export function useLook(): void {
  const { theme, motion } = useSettings();
  const dark = useMedia('(prefers-color-scheme: dark)');
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    dataset.theme = themeOf(theme, dark);
    dataset.motion = motion;
  }, [theme, dark, motion]);
}
