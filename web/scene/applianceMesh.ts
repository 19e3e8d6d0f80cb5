import { BoxGeometry, BufferAttribute, BufferGeometry, EdgesGeometry } from 'three'
import { TONE } from './merge'
import type { Box } from './space'

/** The grey body of an appliance, in the frame of its space: it stays where it is when cabinets come apart. */
export interface ApplianceMesh {
  readonly faces: BufferGeometry
  readonly lines: BufferGeometry
}

export function applianceMesh(boxes: readonly Box[]): ApplianceMesh {
  const solids = boxes.map(({ min, max }) => {
    const solid = new BoxGeometry(max.x - min.x, max.y - min.y, max.z - min.z)
    return solid.translate((min.x + max.x) / 2, (min.y + max.y) / 2, (min.z + max.z) / 2)
  })
  const outlines = solids.map((solid) => new EdgesGeometry(solid))
  const faces = still(solids.map((solid) => solid.toNonIndexed()))
  faces.setAttribute('normal', joined(solids.map((solid) => solid.toNonIndexed().getAttribute('normal').array)))
  const count = faces.getAttribute('position').count
  faces.setAttribute('tone', new BufferAttribute(new Uint8Array(count).fill(TONE.appliance), 1))
  const lines = still(outlines)
  for (const one of [...solids, ...outlines]) one.dispose()
  return { faces, lines }
}

/** How strongly chalk is laid on all of it, of 255. */
export function chalkAppliance({ faces, lines }: ApplianceMesh, strength: number): void {
  for (const one of [faces, lines]) {
    const lit = one.getAttribute('lit')
    lit.array.fill(strength)
    lit.needsUpdate = true
  }
}

export function disposeAppliance({ faces, lines }: ApplianceMesh): void {
  faces.dispose()
  lines.dispose()
}

/** The points of several bodies as one, which goes nowhere. */
function still(geometries: readonly BufferGeometry[]): BufferGeometry {
  const position = joined(geometries.map((one) => one.getAttribute('position').array))
  const { count } = position
  return new BufferGeometry()
    .setAttribute('position', position)
    .setAttribute('away', new BufferAttribute(new Float32Array(3 * count), 3))
    .setAttribute('stage', new BufferAttribute(new Float32Array(2 * count), 2))
    .setAttribute('awayThen', new BufferAttribute(new Float32Array(3 * count), 3))
    .setAttribute('stageThen', new BufferAttribute(new Float32Array(2 * count), 2))
    .setAttribute('lit', new BufferAttribute(new Uint8Array(count), 1, true))
}

function joined(arrays: readonly ArrayLike<number>[]): BufferAttribute {
  return new BufferAttribute(new Float32Array(arrays.flatMap((one) => Array.from(one))), 3)
}
