import { useThree } from '@react-three/fiber'
import { useCallback, useEffect, useLayoutEffect, useMemo } from 'react'
import {
  BufferAttribute,
  type Camera,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  type Mesh,
  type PerspectiveCamera,
  Vector2,
  Vector3,
  type WebGLRenderer,
} from 'three'
import type { Part } from '../../engine/index'
import { type Discs, discsOf, widerThan } from './discs'
import { chalkOn, type Lit } from './lit'
import type { Shading } from './shading'

interface Props {
  readonly parts: readonly Part[]
  /** Half the diagonal of the cabinet and its middle, in mm, in its own frame. */
  readonly middle: { readonly x: number; readonly y: number; readonly z: number }
  readonly reach: number
  readonly areFrontsHidden: boolean
  readonly lit: Lit
  readonly shading: Shading
}

/** What is smaller on the screen is not drawn. */
const LEAST_PX = 1.3

/** All holes of a cabinet in one draw, and none while all of them are too far away to be seen. */
export function Holes({ parts, middle, reach, areFrontsHidden, lit, shading }: Props) {
  const discs = useMemo(() => discsOf(parts, areFrontsHidden), [parts, areFrontsHidden])
  const body = useMemo(() => bodyOf(discs), [discs])
  const invalidate = useThree((state) => state.invalidate)
  useEffect(() => () => body.dispose(), [body])
  useLayoutEffect(() => {
    const strengths = body.getAttribute('lit')
    for (const [at, part] of discs.parts.entries()) strengths.array[at] = chalkOn(lit, part)
    strengths.needsUpdate = true
    invalidate()
  }, [body, discs, lit, invalidate])
  const choose = useCallback(
    function (this: Mesh, renderer: WebGLRenderer, _: unknown, camera: Camera) {
      const eye = camera.getWorldPosition(EYE)
      const at = CENTRE.set(middle.x, middle.y, middle.z).applyMatrix4(this.matrixWorld)
      const scale = this.matrixWorld.getMaxScaleOnAxis()
      const nearest = Math.max(0, eye.distanceTo(at) - reach * scale)
      body.instanceCount = widerThan(discs, (LEAST_PX * nearest) / (pixelsAtOne(camera, renderer) * scale))
    },
    [body, discs, middle, reach],
  )
  if (discs.parts.length === 0) return null
  return <mesh geometry={body} material={shading.holes} frustumCulled={false} onBeforeRender={choose} />
}

const EYE = new Vector3()
const CENTRE = new Vector3()
const SIZE = new Vector2()

/** How many pixels high a thing is that is as high as it is far away. */
function pixelsAtOne(camera: Camera, renderer: WebGLRenderer): number {
  const { fov } = camera as PerspectiveCamera
  // The renderer knows its size; asking the canvas would have the page laid out in the middle of a frame.
  return renderer.getSize(SIZE).y / 2 / Math.tan((fov * Math.PI) / 360)
}

const CORNERS = 14

/** No corner is in the middle: each belongs to the one end of a mortise or to the other. */
const DISC = new Float32Array(
  Array.from({ length: CORNERS }, (_, at) => (2 * Math.PI * (at + 0.5)) / CORNERS).flatMap((angle) => [
    Math.cos(angle),
    Math.sin(angle),
    0,
  ]),
)
const FAN = Array.from({ length: CORNERS - 2 }, (_, at) => [0, at + 1, at + 2]).flat()

function bodyOf(discs: Discs): InstancedBufferGeometry {
  const body = new InstancedBufferGeometry()
  body.setAttribute('position', new BufferAttribute(DISC, 3))
  body.setIndex(FAN)
  const put = (name: string, array: Float32Array, size: number) =>
    body.setAttribute(name, new InstancedBufferAttribute(array, size))
  put('centre', discs.centres, 3)
  put('opens', discs.opens, 3)
  put('along', discs.along, 3)
  put('size', discs.sizes, 2)
  put('away', discs.away, 3)
  put('stage', discs.stages, 2)
  put('awayThen', discs.awayThen, 3)
  put('stageThen', discs.stagesThen, 2)
  body.setAttribute('lit', new InstancedBufferAttribute(new Uint8Array(discs.parts.length), 1, true))
  body.instanceCount = discs.parts.length
  return body
}
