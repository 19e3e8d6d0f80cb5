/** What this browser remembers of how somebody likes to work: nothing of any project. */
export function kept(name: string): string | null {
  try {
    return localStorage.getItem(nameOf(name))
  } catch {
    return null
  }
}

/** A browser that keeps nothing shows it as chosen all the same, until it is closed. */
export function keep(name: string, value: string): void {
  try {
    localStorage.setItem(nameOf(name), value)
  } catch {
    // Nothing is lost but a habit.
  }
}

function nameOf(name: string): string {
  return `casewright-${name}`
}
