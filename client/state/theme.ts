// Dark and light: the system's wish until a person chooses, and then theirs.
import { signal } from '@preact/signals';

export type Theme = 'light' | 'dark';

const KEPT = 'bench-theme';

const dark = window.matchMedia('(prefers-color-scheme: dark)');

const keptTheme = (): Theme | undefined => {
  const kept = window.localStorage.getItem(KEPT);
  return kept === 'light' || kept === 'dark' ? kept : undefined;
};

/** The theme on screen. */
export const theme = signal<Theme>(keptTheme() ?? (dark.matches ? 'dark' : 'light'));

dark.addEventListener('change', () => {
  if (keptTheme() === undefined) theme.value = dark.matches ? 'dark' : 'light';
});

const show = (): void => {
  const kept = keptTheme();
  if (kept !== undefined) document.documentElement.dataset['theme'] = kept;
};

/** Changes to the other theme and remembers it on this machine. */
export function toggleTheme(): void {
  theme.value = theme.value === 'dark' ? 'light' : 'dark';
  window.localStorage.setItem(KEPT, theme.value);
  show();
}

show();
