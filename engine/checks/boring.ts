import { counted } from '../basics/counted'
import type { HoleRow, Recess } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { boxOf, withRole } from './boards'
import { about, type Checked, type Finding } from './finding'
import { sayIn } from './say'

const GEOMETRY = 'worked out from the boards'

/** Pin holes that break into a dado or a groove, and pin holes whose shelf would meet a nailer. */
export function boringFindings(checked: Checked): Finding[] {
  return [...brokenFinding(checked), ...blockedFinding(checked)]
}

/** The centres of the holes in a row that would open into a recess of the same face, along the board. */
export function brokenHoles({ face, x, y, step, count, diameter }: HoleRow, recess: Recess): Mm[] {
  if (recess.face !== face) return []
  const radius = diameter / 2
  const isBeside = y + radius <= recess.y || y - radius >= recess.y + recess.width
  if (isBeside) return []
  const centres = Array.from({ length: count }, (_, at) => settle(x + at * step))
  return centres.filter((centre) => centre + radius > recess.x && centre - radius < recess.x + recess.length)
}

function brokenFinding(checked: Checked): Finding[] {
  const broken = checked.parts.flatMap((part) => {
    const recesses = part.operations.filter(isRecess)
    const rows = part.operations.filter((one): one is HoleRow => one.kind === 'holeRow')
    return rows.flatMap((row) => recesses.flatMap((recess) => brokenHoles(row, recess)))
  })
  if (broken.length === 0) return []
  const message = `${counted(broken.length, 'pin hole')} would break into a dado or a groove of the same face. Move the first hole, or the rows, in the build method.`
  const measure = counted(broken.length, 'hole')
  return [about(checked, { weight: 'mind', message, measure, limit: 'none', source: GEOMETRY })]
}

function isRecess(one: Part['operations'][number]): one is Recess {
  return one.kind === 'dado' || one.kind === 'groove' || one.kind === 'rabbet'
}

/** A loose shelf of full depth cannot be moved to where a nailer or a stretcher stands before the back. */
function blockedFinding(checked: Checked): Finding[] {
  const shelf = withRole(checked.parts, 'adjustableShelf')[0]
  if (!shelf) return []
  const shelves = withRole(checked.parts, 'adjustableShelf').map(boxOf)
  const rear = Math.min(...shelves.map(({ min }) => min.z))
  const inTheWay = withRole(checked.parts, 'topNailer', 'bottomNailer', 'backStretcher')
    .map(boxOf)
    .filter((box) => box.max.z > rear)
  const levels = new Set(checked.parts.flatMap(pinLevels))
  const blocked = [...levels].filter((low) =>
    inTheWay.some(({ min, max }) => low < max.y && low + shelf.thickness > min.y),
  )
  if (blocked.length === 0) return []
  const say = sayIn(checked.display)
  const low = say.length(Math.min(...blocked))
  const message = `${blocked.length} of the ${levels.size} levels of its pin holes, from ${low} up, are behind a nailer or a stretcher: a shelf of full depth cannot be put there.`
  return [
    about(checked, {
      ...{ weight: 'know', message, measure: counted(blocked.length, 'level') },
      ...{ limit: 'none', source: GEOMETRY },
    }),
  ]
}

/** The undersides of shelves on the pins of an upright, in the cabinet's frame. */
function pinLevels(part: Part): Mm[] {
  return part.operations.flatMap((one) => {
    if (one.kind !== 'holeRow') return []
    const { x, step, count, diameter } = one
    return Array.from({ length: count }, (_, at) => settle(part.placement.origin.y + x + at * step + diameter / 2))
  })
}
