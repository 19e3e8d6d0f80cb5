import type { CabinetBuild, Rules } from '../cabinets/build'
import { hingesFor } from '../cabinets/hinge'

interface CornerHinges {
  readonly name: string
  readonly quantity: number
  /** They are bought by the piece. */
  readonly length: null
}

/**
 * What the doors of a corner hang on. The hung leaf of an L carries both, so that their weight together counts, and must
 * open far enough to fold back; a diagonal door hangs aslant on its side.
 */
export function cornerHinges({ cabinet, boards }: CabinetBuild, { materials }: Rules): CornerHinges[] {
  const doors = boards.filter(({ role }) => role === 'door')
  const [hung, folded] = doors
  if (!hung) return []
  const weightOf = ({ length, width, thickness, material }: typeof hung) => {
    return ((length * width * thickness) / 1e9) * (materials[material]?.density ?? 0)
  }
  const all = doors.reduce((sum, door) => sum + weightOf(door), 0)
  const quantity = hingesFor(hung.length, all)
  if (cabinet.corner?.kind === 'diagonal') return [{ name: 'hinge for a diagonal door', quantity, length: null }]
  const between = folded ? hingesFor(folded.length, weightOf(folded)) : 0
  return [
    { name: 'wide-angle hinge for folding doors', quantity, length: null },
    { name: 'hinge between folding leaves', quantity: between, length: null },
  ]
}
