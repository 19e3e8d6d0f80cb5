import { type Beside, type Cabinet, gapFilled, type MaterialId, type Project, type Side } from '../../engine/index'

const WAYS_BESIDE = [
  ['none', 'nothing'],
  ['filler', 'filler'],
  ['skin', 'skin'],
  ['panel floor', 'panel to the floor'],
  ['panel notched', 'panel with the kick cut out'],
] as const

/** What hangs has no kick: its panels are of one kind. */
const WAYS_BESIDE_UPPERS = [
  ...WAYS_BESIDE.filter(([way]) => !way.startsWith('panel')),
  ['panel floor', 'panel'],
] as const

/** An appliance has no side that anything could be screwed to. */
const WAYS_BESIDE_SPACES = WAYS_BESIDE.filter(([way]) => way !== 'filler' && way !== 'skin')

export function waysBeside(cabinets: readonly Cabinet[]): readonly (readonly [BesideWay, string])[] {
  if (cabinets.some(({ space }) => space)) return WAYS_BESIDE_SPACES
  return cabinets.every(({ kind }) => kind === 'upper') ? WAYS_BESIDE_UPPERS : WAYS_BESIDE
}

export type BesideWay = (typeof WAYS_BESIDE)[number][0]

export function wayBeside(beside: Beside): BesideWay {
  return beside.kind === 'panel' ? `panel ${beside.foot}` : beside.kind
}

/** Where there is no gap to fill, a filler begins with this. Common practice, no source. */
const USUAL_FILLER = { kind: 'filler', width: 40, scribe: 10 } as const

/** What a way begins with: a filler fills its gap, an end is of the board it was of or else of front board. */
export function changedBeside(way: BesideWay, project: Project, cabinets: readonly Cabinet[], side: Side): Beside {
  const [first] = cabinets
  if (way === 'none' || !first) return { kind: 'none' }
  if (way === 'filler')
    return usualFiller(project, { ...first, beside: { ...first.beside, [side]: { kind: 'none' } } }, side)
  const before = first.beside[side]
  const material = 'material' in before ? before.material : frontBoard(project, first)
  if (way === 'skin') return { kind: 'skin', material }
  return { kind: 'panel', material, foot: way === 'panel floor' ? 'floor' : 'notched' }
}

function usualFiller(project: Project, cabinet: Cabinet, side: Side): Beside {
  const filled = gapFilled(project, cabinet, side)
  return filled?.kind === 'setBeside' ? filled.beside : USUAL_FILLER
}

function frontBoard({ methods, method: usual }: Project, { method, overrides }: Cabinet): MaterialId {
  return overrides.frontMaterial ?? methods[method ?? usual]!.frontMaterial
}
