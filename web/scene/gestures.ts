import { type Camera, Raycaster, Vector2 } from 'three'
import { isRunId } from '../../engine/index'
import { useStore } from '../store/store'
import { arrange } from './arrange'
import { type CameraHands, METRES } from './Camera'
import { pickPart, type Ray } from './pick'

/** The line of sight through a point of the window. */
export function rayAt(camera: Camera, canvas: HTMLElement, clientX: number, clientY: number): Ray {
  const frame = canvas.getBoundingClientRect()
  const seen = new Vector2(
    ((clientX - frame.left) / frame.width) * 2 - 1,
    1 - ((clientY - frame.top) / frame.height) * 2,
  )
  const caster = new Raycaster()
  camera.updateMatrixWorld()
  caster.setFromCamera(seen, camera)
  const { origin, direction } = caster.ray
  return {
    origin: { x: origin.x / METRES, y: origin.y / METRES, z: origin.z / METRES },
    direction: { x: direction.x, y: direction.y, z: direction.z },
  }
}

/** Selects the board that is met, the space of an appliance, and nothing when none is. */
export function selectAlong(ray: Ray): void {
  const { derived, explode, areFrontsHidden, actions } = useStore.getState()
  const met = pickPart(ray, arrange(derived), explode, areFrontsHidden)
  if (!met) actions.select({ kind: 'nothing' })
  else if (met.part !== null) actions.select({ kind: 'part', owner: met.owner, part: met.part })
  else if (!isRunId(met.owner)) actions.select({ kind: 'cabinets', ids: [met.owner] })
}

/** What a key does to the view; null when the view has no use for it. */
export function keyDeed(key: string, camera: CameraHands, fit: () => void): (() => void) | null {
  switch (key) {
    case 'ArrowLeft':
      return () => camera.turn(-1, 0)
    case 'ArrowRight':
      return () => camera.turn(1, 0)
    case 'ArrowUp':
      return () => camera.turn(0, 1)
    case 'ArrowDown':
      return () => camera.turn(0, -1)
    case '+':
    case '=':
      return () => camera.nearer(1)
    case '-':
      return () => camera.nearer(-1)
    case '0':
    case 'Home':
      return fit
    default:
      return null
  }
}
