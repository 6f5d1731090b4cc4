import { useLayoutEffect, useState } from 'react';
import { useMedia } from '../widgets/use-media.ts';
import { keepThemeChoice, readThemeChoice, type ThemeChoice, themeOf } from './theme-choice.ts';

/** The chosen look, put on the page, and the way to choose another. */
export function useTheme(): readonly [ThemeChoice, (choice: ThemeChoice) => void] {
  const [choice, setChoice] = useState(readThemeChoice);
  const dark = useMedia('(prefers-color-scheme: dark)');
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = themeOf(choice, dark);
  }, [choice, dark]);
  return [
    choice,
    (next) => {
      keepThemeChoice(next);
      setChoice(next);
    },
  ];
}
