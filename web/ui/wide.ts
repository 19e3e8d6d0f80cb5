import { useSyncExternalStore } from 'react'

/** Below this the panes become pages. */
const NARROW = '(max-width: 799px)'

/** Whether the window is so narrow that one pane at a time is shown. */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(watch, () => matchMedia(NARROW).matches)
}

function watch(onChange: () => void): () => void {
  const query = matchMedia(NARROW)
  query.addEventListener('change', onChange)
  return () => query.removeEventListener('change', onChange)
}
