/** What the typist chose to see; `system` follows the computer. */
export type ThemeChoice = 'system' | 'light' | 'dark';

const KEPT_AS = 'handful theme';

/** The choice that a kept word stands for; the computer's own where nothing sensible is kept. */
export function themeChoiceOf(kept: string | null): ThemeChoice {
  return kept === 'light' || kept === 'dark' ? kept : 'system';
}

/** Which of the two looks a choice comes to. */
export function themeOf(choice: ThemeChoice, computerIsDark: boolean): 'light' | 'dark' {
  if (choice === 'system') return computerIsDark ? 'dark' : 'light';
  return choice;
}

/** Reads the choice kept in this browser. */
export function readThemeChoice(): ThemeChoice {
  return themeChoiceOf(localStorage.getItem(KEPT_AS));
}

/** Keeps the choice in this browser. */
export function keepThemeChoice(choice: ThemeChoice): void {
  localStorage.setItem(KEPT_AS, choice);
}
