import { setConsoleFunction } from 'three'

/**
 * What the libraries say that no one can act on: fiber still makes the clock that three has retired, and a lost context
 * is told to the user by the view itself.
 */
const KNOWN =
  /THREE\.Clock: .*deprecated|Context (Lost|Restored)|WebGL context could not be created|WEBGL_lose_context extension not supported/i

/** Keeps three's known remarks out of the console and lets every other through. */
export function quietThree(): void {
  setConsoleFunction((kind: 'log' | 'warn' | 'error', message: string, ...more: unknown[]) => {
    if (!KNOWN.test(message)) console[kind](message, ...more)
  })
}
