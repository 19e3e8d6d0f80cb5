/**
 * Keeps the app on this device, so that it opens without a network. A new version is fetched beside the one at work and
 * takes its place when the last tab of it is closed, never in the middle of something. Where the browser keeps no such
 * copies, or the page is not a built one, nothing happens.
 */
export function keepForOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  addEventListener('load', () => {
    // A browser that refuses, as in a private window, leaves the page as it is.
    navigator.serviceWorker.register('./sw.js').catch(() => {})
  })
}
