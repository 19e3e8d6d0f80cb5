import { counted } from '../basics/counted'
import { boxOf } from '../cabinets/boardBox'
import { NAILERS } from '../cabinets/nailer'
import { centresOf, type HolePurpose, type HoleRow, type Operation, type Recess } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { withRole } from './boards'
import { about, type Checked, type Finding, GEOMETRY } from './finding'
import { sayIn } from './say'

/** Pin holes that break into a dado or a groove, and pin holes whose shelf would meet a nailer. */
export function boringFindings(checked: Checked): Finding[] {
  return [...brokenFinding(checked), ...blockedFinding(checked), ...shallowFindings(checked)]
}

/**
 * Holes that are set to go through their boards: they are bored as deep as may be instead. That a partition is bored from
 * both faces, less than half through, needs no word.
 */
function shallowFindings(checked: Checked): Finding[] {
  const { shelves, slides } = checked.rules.method
  return [
    ...shallowFinding('shelfPin', 'pin holes of its shelves', shelves.pinDepth, checked),
    ...shallowFinding('slide', 'screw holes of its slides', slides.holeDepth, checked),
  ]
}

function shallowFinding(purpose: HolePurpose, words: string, wished: Mm, checked: Checked): Finding[] {
  const bored = checked.parts.flatMap(({ operations, thickness, role }) =>
    operations.flatMap((one) =>
      one.kind === 'holeRow' && one.purpose === purpose && role !== 'partition' && one.depth < wished
        ? [{ depth: one.depth, thickness }]
        : [],
    ),
  )
  const [first] = bored.sort((a, b) => a.depth - b.depth)
  if (!first) return []
  const say = sayIn(checked.display)
  const [depth, set] = say.apart(first.depth, wished)
  const message = `the ${words} are set to ${set} deep; in boards ${say.length(first.thickness)} thick they are bored ${depth}, so that they do not go through. Change the depth in the build method.`
  return [about(checked, { weight: 'mind', message, measure: set, limit: depth, source: GEOMETRY })]
}

/** The centres of the holes in a row that would open into a recess of the same face, along the board. */
export function brokenHoles(row: HoleRow, recess: Recess): Mm[] {
  if (recess.face !== row.face) return []
  const radius = row.diameter / 2
  return centresOf(row)
    .filter(({ x, y }) => {
      const isBeside = y + radius <= recess.y || y - radius >= recess.y + recess.width
      return !isBeside && x + radius > recess.x && x - radius < recess.x + recess.length
    })
    .map(({ x }) => x)
}

function brokenFinding(checked: Checked): Finding[] {
  const broken = checked.parts.flatMap((part) => {
    const recesses = part.operations.filter(isRecess)
    const rows = part.operations.filter(isPinRow)
    return rows.flatMap((row) => recesses.flatMap((recess) => brokenHoles(row, recess)))
  })
  if (broken.length === 0) return []
  const message = `${counted(broken.length, 'pin hole')} would break into a dado or a groove of the same face. Move the first hole, or the rows, in the build method.`
  const measure = counted(broken.length, 'hole')
  return [about(checked, { weight: 'mind', message, measure, limit: 'none', source: GEOMETRY })]
}

function isPinRow(one: Operation): one is HoleRow {
  return one.kind === 'holeRow' && one.purpose === 'shelfPin'
}

function isRecess(one: Operation): one is Recess {
  return one.kind === 'dado' || one.kind === 'groove' || one.kind === 'rabbet'
}

/** A loose shelf of full depth cannot be moved to where a nailer or a stretcher stands before the back. */
function blockedFinding(checked: Checked): Finding[] {
  const shelf = withRole(checked.parts, 'adjustableShelf')[0]
  if (!shelf) return []
  const shelves = withRole(checked.parts, 'adjustableShelf').map(boxOf)
  const rear = Math.min(...shelves.map(({ min }) => min.z))
  const inTheWay = withRole(checked.parts, ...NAILERS, 'backStretcher')
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
    if (!isPinRow(one)) return []
    return centresOf(one).map(({ x }) => settle(part.placement.origin.y + x + one.diameter / 2))
  })
}
