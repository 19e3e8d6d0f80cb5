import { type Wall, wallAt } from '../../engine/index'
import { useStore } from './store'

/** The wall in sight, as it is shown; null in a project without walls. */
export function useWallInSight(): Wall | null {
  return useStore(({ shown, wall }) => wallAt(shown, wall))
}
