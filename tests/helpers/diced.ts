import type { MaterialId } from '../../engine/basics/id'
import type { Random } from '../../engine/basics/random'
import type { Rules } from '../../engine/cabinets/build'
import type { Corner } from '../../engine/project/corner'
import {
  type Beside,
  type Cabinet,
  type CabinetKind,
  type ColumnShelves,
  type Front,
  type Interior,
  type InteriorBay,
  NOTHING_BESIDE,
} from '../../engine/project/document'
import type { MethodChoices } from '../../engine/project/method'
import { BASE_TOPS } from './anyMethod'
import { aCabinet, PLAIN, rulesWith } from './cabinets'
import { picker } from './dice'
import { anyFrames } from './frames'

interface Built {
  readonly cabinet: Cabinet
  readonly rules: Rules
}

/** A cabinet of any kind, by any choice of method, within sizes a shop builds. The same dice, the same cabinet. */
export function anyCabinet(dice: Random): Built {
  const { cabinet, rules } = anyUndivided(dice)
  // Drawn last, so that all else of a seed is as it is without bays.
  return { cabinet: { ...cabinet, interior: { ...cabinet.interior, ...anyBays(dice) } }, rules }
}

/** The same with one partition at most. */
function anyUndivided(dice: Random): Built {
  const oneOf = picker(dice)
  const between = (least: number, most: number) => Math.round((least + dice() * (most - least)) * 8) / 8
  const kind = oneOf<CabinetKind>('base', 'upper', 'tall')
  const choices = anyChoices(dice)
  const thicknesses = {
    carcass: oneOf(16, 18, 18.25625, 19),
    back: oneOf(4, 6, 12.5),
    front: oneOf(18, 19, 22),
    drawer: oneOf(12, 15),
    drawerBottom: oneOf(5, 6),
  }
  const cabinet = aCabinet(kind, {
    width: between(320, 1100),
    height: kind === 'tall' ? between(1500, 2300) : between(560, 940),
    depth: kind === 'upper' ? between(280, 400) : between(450, 650),
    front: anyFront(dice),
    interior: {
      fixedShelves: oneOf(0, 0, 1, 2),
      adjustableShelves: oneOf(0, 1, 2),
      partition: oneOf(null, { at: 0.5 }, { at: 0.37 }),
      rollOuts: { count: oneOf(0, 0, 0, 1, 2), height: oneOf(80, 120) },
      dividers: oneOf(0, 0, 0, 2),
      pipes: { width: oneOf(0, 150, 200), height: 120, bottom: oneOf(200, 300) },
    },
    overrides: {},
    isGrainRunning: false,
    pins: {},
  })
  const beside = { left: anyBeside(dice), right: anyBeside(dice) }
  const setback = oneOf(0, 10)
  const rules = rulesWith(
    {
      shelves: { ...PLAIN.shelves, setback, firstHole: 64 },
      fronts: { gap: oneOf(2, 3), endReveal: 1.5, topReveal: oneOf(0, 3), bottomReveal: oneOf(0, 2) },
      banding: { carcass: oneOf(0, 1), fronts: 1, isInFinishedSize: oneOf(true, false) },
    },
    thicknesses,
  )
  // Drawn last, so that all else of a seed is as it is without frames.
  const all = { ...choices, ...anyFrames(dice) }
  return { cabinet: { ...cabinet, beside }, rules: { ...rules, method: { ...rules.method, ...all } } }
}

/** A cabinet in a corner, by any choice of method. The same dice, the same cabinet. */
export function anyCorner(dice: Random): Built {
  const { cabinet, rules } = anyUndivided(dice)
  const oneOf = picker(dice)
  const between = (least: number, most: number) => Math.round((least + dice() * (most - least)) * 8) / 8
  const kind = cabinet.kind === 'upper' ? 'upper' : 'base'
  const otherDepth = kind === 'upper' ? between(280, 400) : between(450, 650)
  const corner: Corner = {
    kind: oneOf('L', 'diagonal'),
    hand: oneOf('left', 'right'),
    other: between(cabinet.depth + 200, cabinet.depth + 500),
    otherDepth,
  }
  const front: Front = oneOf<Front>({ kind: 'open' }, { kind: 'door', hinge: 'left' }, { kind: 'door', hinge: 'right' })
  const { fixedShelves, adjustableShelves } = cabinet.interior
  return {
    rules: { ...rules, kick: oneOf('perCabinet', 'inLengths') },
    cabinet: {
      ...cabinet,
      kind,
      corner,
      front,
      width: between(otherDepth + 200, otherDepth + 500),
      height: between(560, 940),
      interior: { fixedShelves, adjustableShelves, partition: null },
      beside: { ...NOTHING_BESIDE, [corner.hand === 'left' ? 'right' : 'left']: anyBeside(dice) },
    },
  }
}

/** Nothing in two of three; else up to four bays, some with what is their own, and fixed shelves at heights. */
function anyBays(dice: Random): Partial<Interior> {
  const oneOf = picker(dice)
  const fixedAt = () => [oneOf(null, 150 + Math.round(dice() * 200)), oneOf(null, 380 + Math.round(dice() * 100))]
  if (oneOf(true, true, false)) return oneOf({}, { fixedAt: fixedAt() })
  const bays = Array.from({ length: oneOf(2, 3, 3, 4) }, (_, at): InteriorBay => {
    const width = 100 + Math.round(dice() * 400) / 4
    const own: ColumnShelves = {
      fixedShelves: oneOf(0, 1, 2),
      adjustableShelves: oneOf(0, 1, 2),
      fixedAt: fixedAt(),
      rollOuts: { count: oneOf(0, 0, 1), height: 90 },
      dividers: oneOf(0, 0, 1),
    }
    return {
      size: at > 0 && dice() < 0.4 ? { kind: 'fixed', width } : { kind: 'share', share: oneOf(1, 1, 2) },
      shelves: oneOf(null, own, own),
    }
  })
  return { partition: null, bays }
}

function anyBeside(dice: Random): Beside {
  const ways: readonly Beside[] = [
    { kind: 'none' },
    { kind: 'filler', width: 10 + Math.round(dice() * 80), scribe: 8 },
    { kind: 'skin', material: 'back' as MaterialId },
    { kind: 'panel', material: 'front' as MaterialId, foot: 'floor' },
    { kind: 'panel', material: 'front' as MaterialId, foot: 'notched' },
  ]
  return ways[Math.floor(dice() * ways.length)]!
}

function anyChoices(dice: Random): Partial<MethodChoices> {
  const oneOf = picker(dice)
  const depth = oneOf({ rule: 'depth', depth: 6 } as const, { rule: 'residual', residual: 10 } as const)
  return {
    cornerJoint: oneOf<MethodChoices['cornerJoint']>(
      { kind: 'butt' },
      { kind: 'rabbet', depth },
      { kind: 'dado', depth },
    ),
    bottom: oneOf('between', 'under'),
    top: oneOf('between', 'over'),
    baseTop: oneOf(...BASE_TOPS),
    back: oneOf<MethodChoices['back']>(
      { kind: 'groove', inset: 12, depth: 7, clearance: 2 },
      { kind: 'groove', inset: 20, depth: 5, clearance: 0 },
      { kind: 'rabbet', depth: 9 },
      { kind: 'applied', margin: 2 },
      { kind: 'none' },
    ),
    floor: oneOf<MethodChoices['floor']>(
      { kind: 'notched', height: 100, setback: 75 },
      { kind: 'plinth', height: 90, setback: 60 },
      { kind: 'legs', height: 110, setback: 50 },
      { kind: 'none' },
    ),
    nailers: { where: oneOf('inside', 'behind'), top: oneOf(true, false), bottom: oneOf(true, false), width: 80 },
    fixedShelf: oneOf('dado', 'pinned'),
    frontMount: oneOf('fullOverlay', 'halfOverlay', 'inset'),
    slide: oneOf<MethodChoices['slide']>(
      { kind: 'side', clearance: 12.7 },
      { kind: 'undermount', insideDeduction: 41.3 },
    ),
  }
}

function anyFront(dice: Random): Front {
  const oneOf = picker(dice)
  const door = { kind: 'door', hinge: 'left' } as const
  const share = (front: Front, part = 1) => ({ size: { kind: 'share', share: part }, front }) as const
  const fixed = (front: Front, height: number) => ({ size: { kind: 'fixed', height }, front }) as const
  const niche = { kind: 'appliance', width: 100, height: 100, air: oneOf(0, 25) } as const
  const wide = (front: Front, part = 1) => ({ size: { kind: 'share', share: part }, front, shelves: null }) as const
  return oneOf<Front>(
    { kind: 'open' },
    door,
    { kind: 'pair' },
    { kind: 'door', hinge: 'top' },
    { kind: 'rows', rows: [fixed({ kind: 'falseFront' }, 150), share({ kind: 'pair' })] },
    { kind: 'columns', columns: [wide({ kind: 'door', hinge: 'left' }), wide({ kind: 'drawer' })] },
    {
      kind: 'columns',
      columns: [
        wide({ kind: 'open' }, 1.5),
        wide({
          kind: 'rows',
          rows: [fixed({ kind: 'drawer' }, 150), share({ kind: 'drawer', insert: { divisions: 2, height: 70 } })],
        }),
        wide({ kind: 'pair' }, 2),
      ],
    },
    { kind: 'rows', rows: [share(door), share(niche), fixed({ kind: 'drawer' }, 150)] },
    { kind: 'columns', columns: [wide(niche), wide({ kind: 'rows', rows: [share(niche), share(door)] }), wide(door)] },
    {
      kind: 'rows',
      rows: [fixed({ kind: 'columns', columns: [wide(door), wide({ kind: 'falseFront' })] }, 200), share(door)],
    },
    {
      kind: 'rows',
      rows: [
        share({
          kind: 'columns',
          columns: [
            wide({ kind: 'blind', neighbour: 90, filler: oneOf(0, 40), pull: 20 }),
            wide({ ...door, hinge: 'right' }),
          ],
        }),
      ],
    },
    {
      kind: 'rows',
      rows: [
        fixed({ kind: 'columns', columns: [wide({ kind: 'drawer' }), wide({ kind: 'drawer' }, 1.5)] }, 160),
        share({ kind: 'pair' }),
      ],
    },
    {
      kind: 'rows',
      rows: [
        share(door),
        fixed({ kind: 'columns', columns: [wide({ kind: 'drawer' }), wide(door), wide({ kind: 'open' })] }, 180),
        share({ kind: 'columns', columns: [wide({ kind: 'drawer' }), wide({ kind: 'drawer' })] }),
      ],
    },
    { kind: 'rows', rows: [fixed({ kind: 'falseFront' }, 140), share({ kind: 'pullOut', box: 110 })] },
    { kind: 'drawer', insert: { divisions: 4, height: 60 } },
    {
      kind: 'rows',
      rows: [fixed({ kind: 'drawer', insert: { divisions: 3, height: 50 } }, 150), share({ kind: 'pair' })],
    },
    { kind: 'rows', rows: [share(door, 2), share({ kind: 'drawer' })] },
    { kind: 'rows', rows: [share({ kind: 'drawer' }), share({ kind: 'drawer' }, 1.5), share({ kind: 'drawer' }, 1.5)] },
    { kind: 'rows', rows: [fixed({ kind: 'drawer' }, 140), share({ kind: 'open' }), fixed({ kind: 'drawer' }, 190)] },
    {
      kind: 'rows',
      rows: [
        share({ kind: 'rows', rows: [fixed({ kind: 'drawer' }, 130), share(door)] }, 2),
        share({ kind: 'drawer' }),
      ],
    },
  )
}
