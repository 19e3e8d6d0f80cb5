import { useSyncExternalStore } from 'react'

/** Below this the panes become pages. */
const NARROW = '(max-width: 799px)'

/** Whether the window is so narrow that one pane at a time is shown. */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(watch, () => narrow().matches)
}

let query: MediaQueryList | undefined

/** One query for the page: asking for a new one costs more than its answer. */
function narrow(): MediaQueryList {
  query ??= matchMedia(NARROW)
  return query
}

function watch(onChange: () => void): () => void {
  narrow().addEventListener('change', onChange)
  return () => narrow().removeEventListener('change', onChange)
}
