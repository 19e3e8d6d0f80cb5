export type Theme = 'system' | 'light' | 'dark'

const KEPT_AS = 'casewright-theme'

/** The theme chosen before, or that of the system where none was or nothing can be kept. */
export function chosenTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEPT_AS)
    return kept === 'light' || kept === 'dark' ? kept : 'system'
  } catch {
    return 'system'
  }
}

export function chooseTheme(theme: Theme): void {
  showTheme(theme)
  try {
    localStorage.setItem(KEPT_AS, theme)
  } catch {
    // A browser that keeps nothing shows the theme all the same, until it is closed.
  }
}

export function showTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme
  else document.documentElement.dataset.theme = theme
}
