import { useCallback, useSyncExternalStore } from 'react'

/** Below this the panes become pages; not on paper, which shows what was in sight, however wide it is. */
const NARROW = 'screen and (max-width: 799px)'
/** Below this there is no room for a card between the wall and 3D. */
const TIGHT = 'screen and (max-width: 1179px)'

/** Whether the window is so narrow that one pane at a time is shown. */
export function useIsNarrow(): boolean {
  return useMedia(NARROW)
}

/** Whether the window is so narrow that a card stands in the place of 3D. */
export function useIsTight(): boolean {
  return useMedia(TIGHT)
}

/** Whether the first pointer is a finger, which needs more to take hold of. */
export function useIsCoarse(): boolean {
  return useMedia('(pointer: coarse)')
}

const queries = new Map<string, MediaQueryList>()

/** One query of a kind for the page: asking for a new one costs more than its answer. */
function mediaOf(query: string): MediaQueryList {
  const media = queries.get(query) ?? matchMedia(query)
  queries.set(query, media)
  return media
}

function useMedia(query: string): boolean {
  const watch = useCallback(
    (onChange: () => void) => {
      const media = mediaOf(query)
      media.addEventListener('change', onChange)
      return () => media.removeEventListener('change', onChange)
    },
    [query],
  )
  return useSyncExternalStore(
    watch,
    () => mediaOf(query).matches,
    // Written out as text there is no window to ask.
    () => false,
  )
}
