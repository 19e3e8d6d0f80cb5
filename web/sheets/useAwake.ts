import { useEffect } from 'react'

/** Keeps the screen on while it is used, where the browser can; it asks again when the page comes back into sight. */
export function useAwake(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null
    let isLeft = false
    const ask = () => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return
      navigator.wakeLock.request('screen').then(
        (fresh) => {
          if (isLeft) void fresh.release()
          else lock = fresh
        },
        // A browser may refuse, as on low battery: the screen then goes dark as it always does.
        () => {},
      )
    }
    ask()
    document.addEventListener('visibilitychange', ask)
    return () => {
      isLeft = true
      document.removeEventListener('visibilitychange', ask)
      void lock?.release()
    }
  }, [])
}
