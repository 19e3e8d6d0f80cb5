import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useImperativeHandle, useMemo, useRef } from 'react'
import { MathUtils, type PerspectiveCamera, Spherical, Vector3 } from 'three'
import { OrbitControls } from 'three/addons/controls/OrbitControls.js'
import { distanceToFit } from './fit'
import { type Box, middleOf } from './space'

/** The scene is drawn in metres. */
export const METRES = 0.001
/** From the run to the eye at first: from the right and a little above, as a maker draws a cabinet. */
export const FIRST_LOOK = new Vector3(0.54, 0.4, 1).normalize()
/** A glide to another view, in seconds. */
const GLIDE = 0.28
/** One press of an arrow key, in radians, and one step nearer or further. */
const TURN = Math.PI / 24
const STEP_NEARER = 0.87

/** What the controls around the picture can ask of the camera. */
export interface CameraHands {
  /** Shows all of a box, in mm, from where the eye looks now. */
  fit(box: Box, glide: boolean): void
  /** Whether the last fit still stands: turning keeps it, moving nearer or aside ends it. A new camera is still to be fitted. */
  isFitted(): boolean
  turn(stepsRight: number, stepsUp: number): void
  nearer(steps: number): void
}

interface Aim {
  readonly target: Vector3
  readonly distance: number
}

export function CameraRig({ hands }: { readonly hands: RefObject<CameraHands | null> }) {
  const camera = useThree((state) => state.camera) as PerspectiveCamera
  const canvas = useThree((state) => state.gl.domElement)
  const invalidate = useThree((state) => state.invalidate)
  const get = useThree((state) => state.get)
  const fitted = useRef<Aim | null>(null)
  const glide = useRef<Glide | null>(null)
  const controls = useMemo(() => {
    const made = new OrbitControls(camera)
    made.zoomToCursor = true
    made.minDistance = 0.15
    made.maxDistance = 60
    made.maxPolarAngle = Math.PI * 0.72
    return made
  }, [camera])

  useEffect(() => {
    const moved = () => invalidate()
    const taken = () => {
      glide.current = null
    }
    controls.connect(canvas)
    controls.addEventListener('change', moved)
    controls.addEventListener('start', taken)
    return () => {
      controls.removeEventListener('change', moved)
      controls.removeEventListener('start', taken)
      controls.disconnect()
    }
  }, [controls, canvas, invalidate])

  useImperativeHandle(hands, () => {
    const aimAt = (aim: Aim, slowly: boolean) => {
      fitted.current = aim
      glide.current = slowly ? { from: aimOf(controls, camera), to: aim, passed: 0 } : null
      if (!slowly) place(controls, camera, aim)
      invalidate()
    }
    return {
      fit(box, slowly) {
        const { size } = get()
        const back = camera.position.clone().sub(controls.target)
        const direction = back.lengthSq() === 0 ? FIRST_LOOK : back.normalize()
        const distance = distanceToFit(box, direction, camera.fov, size.width / Math.max(size.height, 1)) * METRES
        const middle = middleOf(box)
        const target = new Vector3(middle.x, middle.y, middle.z).multiplyScalar(METRES)
        aimAt({ target, distance: MathUtils.clamp(distance, controls.minDistance, controls.maxDistance) }, slowly)
      },
      isFitted() {
        const aim = fitted.current
        if (!aim || glide.current) return true
        const now = aimOf(controls, camera)
        return now.target.distanceTo(aim.target) < 0.01 && Math.abs(now.distance - aim.distance) < 0.01
      },
      turn(right, up) {
        const back = new Spherical().setFromVector3(camera.position.clone().sub(controls.target))
        back.theta += right * TURN
        back.phi = MathUtils.clamp(back.phi - up * TURN, 0.05, controls.maxPolarAngle)
        camera.position.setFromSpherical(back).add(controls.target)
        controls.update()
        invalidate()
      },
      nearer(steps) {
        const now = aimOf(controls, camera)
        place(controls, camera, { target: now.target, distance: now.distance * STEP_NEARER ** steps })
        invalidate()
      },
    }
  }, [controls, camera, get, invalidate])

  useFrame((_, delta) => {
    const running = glide.current
    if (!running) return
    running.passed = Math.min(GLIDE, running.passed + Math.min(delta, 0.05))
    place(controls, camera, between(running))
    if (running.passed >= GLIDE) glide.current = null
    else invalidate()
  })
  return null
}

interface Glide {
  readonly from: Aim
  readonly to: Aim
  passed: number
}

function between({ from, to, passed }: Glide): Aim {
  const share = MathUtils.smoothstep(passed / GLIDE, 0, 1)
  return {
    target: from.target.clone().lerp(to.target, share),
    distance: MathUtils.lerp(from.distance, to.distance, share),
  }
}

function aimOf(controls: OrbitControls, camera: PerspectiveCamera): Aim {
  return { target: controls.target.clone(), distance: camera.position.distanceTo(controls.target) }
}

/** Moves the eye and what it looks at, and keeps the direction of looking. */
function place(controls: OrbitControls, camera: PerspectiveCamera, aim: Aim): void {
  const back = camera.position.clone().sub(controls.target)
  const direction = back.lengthSq() === 0 ? FIRST_LOOK : back.normalize()
  controls.target.copy(aim.target)
  camera.position.copy(aim.target).addScaledVector(direction, aim.distance)
  camera.near = Math.max(0.02, aim.distance / 200)
  camera.far = aim.distance + 60
  camera.updateProjectionMatrix()
  controls.update()
}
