import { memo, useEffect, useMemo } from 'react'
import { BufferGeometry, Float32BufferAttribute, Path, Shape, ShapeGeometry } from 'three'
import type { Wall } from '../../engine/index'
import type { Shading } from './shading'
import { plus } from './space'
import { turned, type WallFrame } from './walls'

/** Behind the backs of cabinets, so that the two never fight for one plane. */
const BEHIND = -2
/** Of the floor, out into the room. */
const FLOOR_DEPTH = 900
/** Between the hatches under the floor line. */
const HATCH = 90

/** The wall as faint paper with its openings cut out, and the line where it meets the floor. */
export const WallModel = memo(function WallModel(props: { wall: Wall; frame: WallFrame; shading: Shading }) {
  const { wall, frame, shading } = props
  const { x, y, z } = plus(frame.origin, turned({ x: 0, y: 0, z: BEHIND }, frame.turns))
  const plane = useMemo(() => planeOf(wall), [wall])
  const lines = useMemo(() => linesOf(wall), [wall])
  useEffect(() => () => plane.dispose(), [plane])
  useEffect(() => () => lines.dispose(), [lines])
  return (
    <group position={[x, y, z]} rotation={[0, (-frame.turns * Math.PI) / 2, 0]} dispose={null}>
      <mesh geometry={plane} material={shading.wall} renderOrder={-2} />
      <lineSegments geometry={lines} material={shading.wallLines} renderOrder={-1} />
    </group>
  )
})

function planeOf(wall: Wall): BufferGeometry {
  const shape = new Shape()
  rectangle(shape, 0, 0, wall.length, wall.height)
  for (const opening of Object.values(wall.openings)) {
    const hole = new Path()
    rectangle(hole, opening.left, opening.bottom, opening.width, opening.height)
    shape.holes.push(hole)
  }
  return new ShapeGeometry(shape)
}

function rectangle(path: Path, left: number, bottom: number, width: number, height: number): void {
  path.moveTo(left, bottom)
  path.lineTo(left + width, bottom)
  path.lineTo(left + width, bottom + height)
  path.lineTo(left, bottom + height)
  path.closePath()
}

function linesOf(wall: Wall): BufferGeometry {
  const points: number[] = []
  const line = (x1: number, y1: number, x2: number, y2: number) => points.push(x1, y1, 0, x2, y2, 0)
  const box = (left: number, bottom: number, right: number, top: number) => {
    line(left, bottom, right, bottom)
    line(right, bottom, right, top)
    line(right, top, left, top)
    line(left, top, left, bottom)
  }
  box(0, 0, wall.length, wall.height)
  for (const { left, bottom, width, height, kind } of Object.values(wall.openings)) {
    box(left, bottom, left + width, bottom + height)
    if (kind === 'window') line(left + width / 2, bottom, left + width / 2, bottom + height)
  }
  for (let x = 0; x <= wall.length; x += HATCH) points.push(x, 0, 0, Math.max(0, x - HATCH / 2), -HATCH / 2, 0)
  points.push(0, 0, 0, 0, 0, FLOOR_DEPTH, wall.length, 0, 0, wall.length, 0, FLOOR_DEPTH)
  points.push(0, 0, FLOOR_DEPTH, wall.length, 0, FLOOR_DEPTH)
  return new BufferGeometry().setAttribute('position', new Float32BufferAttribute(points, 3))
}
