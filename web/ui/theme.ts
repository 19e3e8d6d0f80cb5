import { keep, kept } from './kept'

export type Theme = 'system' | 'light' | 'dark'

/** The theme chosen before, or that of the system where none was or nothing can be kept. */
export function chosenTheme(): Theme {
  const theme = kept('theme')
  return theme === 'light' || theme === 'dark' ? theme : 'system'
}

export function chooseTheme(theme: Theme): void {
  showTheme(theme)
  keep('theme', theme)
}

export function showTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme
  else document.documentElement.dataset.theme = theme
}
