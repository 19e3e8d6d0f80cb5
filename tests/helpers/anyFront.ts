import fc from 'fast-check'
import type { ColumnShelves, Front, FrontColumn, FrontRow, Interior } from '../../engine/project/document'
import type { Mm } from '../../engine/units/length'
import { anyOf, mm, oneOf } from './anyMethod'

const DRAWER = { kind: 'drawer' } as const

const niche = { kind: 'appliance', width: 100, height: 100, air: 0 } as const

const leaf = oneOf<Front>(
  ...([{ kind: 'open' }, { kind: 'door', hinge: 'left' }, { kind: 'door', hinge: 'right' }] as const),
  ...([{ kind: 'door', hinge: 'left', orPair: true }] as const),
  ...([{ kind: 'door', hinge: 'right', orPair: true }] as const),
  ...([{ kind: 'pair' }, { kind: 'door', hinge: 'top' }, { kind: 'falseFront' }] as const),
  ...([DRAWER, DRAWER, { ...DRAWER, insert: { divisions: 2, height: 70 } }] as const),
  { ...DRAWER, insert: { divisions: 4, height: 50 } },
  ...([
    { kind: 'pullOut', box: 110 },
    { kind: 'pullOut', box: 150 },
  ] as const),
  ...[niche, { ...niche, height: 150, air: 25 }, { ...niche, width: 200, depth: 240 }],
)
/** In a column that is in a row: a niche would have no board beside it. */
const small = leaf.filter(({ kind }) => kind !== 'appliance')

const share = fc.record({ kind: fc.constant('share' as const), share: oneOf(1, 1.5, 2) })
const rowSize = anyOf<FrontRow['size']>(
  [1, share],
  [1, fc.record({ kind: fc.constant('fixed' as const), height: mm(110, 200) })],
  [1, fc.record({ kind: fc.constant('share' as const), share: fc.constant(1), more: oneOf(10, 24) })],
)
const columnSize = anyOf<FrontColumn['size']>(
  [1, share],
  [1, fc.record({ kind: fc.constant('fixed' as const), width: mm(120, 300) })],
)

const EMPTY: ColumnShelves = { fixedShelves: 0, adjustableShelves: 0 }

const shelves: fc.Arbitrary<ColumnShelves | null> = oneOf<ColumnShelves | null>(
  null,
  EMPTY,
  { fixedShelves: 1, adjustableShelves: 1 },
  { ...EMPTY, rollOuts: { count: 1, height: 90 } },
  { ...EMPTY, dividers: 1 },
)

/** What a front wants at least, in mm: designs that ask for more than there is are for the tests of problems. */
export function wantedBy(front: Front): { readonly width: Mm; readonly height: Mm } {
  switch (front.kind) {
    case 'appliance':
      return { width: front.width + 60, height: front.height + 40 }
    case 'pair':
      return { width: 300, height: 130 }
    case 'door':
      return front.orPair ? { width: 300, height: 130 } : { width: 150, height: 130 }
    case 'blind':
      return { width: front.neighbour + front.pull + 30, height: 130 }
    case 'drawer':
    case 'pullOut':
      return { width: 180, height: front.kind === 'pullOut' ? front.box + 60 : 130 }
    case 'rows': {
      const all = front.rows.map((row) => ({ wants: wantedBy(row.front), size: row.size }))
      return { width: most(all.map(({ wants }) => wants.width)), height: inAll(all, 'height') }
    }
    case 'columns': {
      const all = front.columns.map((column) => ({ wants: wantedBy(column.front), size: column.size }))
      return { width: inAll(all, 'width'), height: most(all.map(({ wants }) => wants.height)) }
    }
    default:
      return { width: 150, height: 130 }
  }
}

const most = (lengths: readonly Mm[]): Mm => Math.max(0, ...lengths)

/** What is fixed, and shares that are large enough for the one that wants the most. */
function inAll(
  all: readonly { readonly wants: { readonly width: Mm; readonly height: Mm }; readonly size: Size }[],
  along: 'width' | 'height',
): Mm {
  const shares = all.flatMap(({ size, wants }) => (size.kind === 'share' ? [{ ...size, wants: wants[along] }] : []))
  const each = most(shares.map(({ share = 1, wants }) => wants / share))
  const more = shares.reduce((sum, one) => sum + (one.more ?? 0), 0)
  const fixed = all.reduce((sum, { size }) => sum + (size.kind === 'fixed' ? (size.width ?? size.height ?? 0) : 0), 0)
  return Math.ceil(fixed + more + shares.reduce((sum, { share = 1 }) => sum + share * each, 0))
}

interface Size {
  readonly kind: 'share' | 'fixed'
  readonly share?: number
  readonly more?: Mm
  readonly width?: Mm
  readonly height?: Mm
}

/** Fixed sizes are no less than what is in them wants, and something takes what they leave. */
function sound<Of extends FrontRow | FrontColumn>(all: readonly Of[]): Of[] {
  const isLeft = all.some(({ size }) => size.kind === 'share')
  return all.map((one, at) => {
    const { size, front } = one
    if (size.kind === 'share') return one
    if (at === 0 && !isLeft) return { ...one, size: { kind: 'share', share: 1 } }
    const wants = wantedBy(front)
    if ('height' in size) return { ...one, size: { ...size, height: Math.max(size.height, wants.height) } }
    return { ...one, size: { ...size, width: Math.max(size.width, wants.width) } }
  })
}

const rowsOf = (front: fc.Arbitrary<Front>): fc.Arbitrary<Front> =>
  fc
    .array(fc.record({ size: rowSize, front }), { minLength: 2, maxLength: 4 })
    .map((rows) => ({ kind: 'rows', rows: sound<FrontRow>(rows) }))

const columnsOf = (front: fc.Arbitrary<Front>): fc.Arbitrary<Front> =>
  fc
    .array(fc.record({ size: columnSize, front, shelves }), { minLength: 2, maxLength: 3 })
    .map((columns) => ({ kind: 'columns', columns: sound<FrontColumn>(columns) }))

/** The blind part of a corner and a door that opens away from it, at either end. */
const blind: fc.Arbitrary<Front> = fc
  .record({ neighbour: oneOf(90, 120), filler: oneOf(0, 40), pull: oneOf(20, 45), isAtRight: fc.boolean() })
  .map(({ isAtRight, ...part }) => {
    const share = { size: { kind: 'share', share: 1 }, shelves: null } as const
    const corner: FrontColumn = { ...share, front: { kind: 'blind', ...part } }
    const door: FrontColumn = { ...share, front: { kind: 'door', hinge: isAtRight ? 'left' : 'right' } }
    return { kind: 'columns', columns: isAtRight ? [door, corner] : [corner, door] }
  })

const banded = anyOf<Front>([2, leaf], [1, rowsOf(leaf)])
const parted = anyOf<Front>([2, leaf], [1, columnsOf(small)])

/** A tree of openings: one, rows, rows of rows, columns of rows, rows of columns, and the blind part of a corner. */
export const anyFront: fc.Arbitrary<Front> = anyOf<Front>(
  [3, leaf],
  [3, rowsOf(leaf)],
  [3, columnsOf(banded)],
  [3, rowsOf(parted)],
  [3, rowsOf(banded)],
  [1, blind],
)

const shelvesAlone = fc.record({
  ...{ fixedShelves: oneOf(0, 0, 1, 2), adjustableShelves: oneOf(0, 1, 2, 4), partition: fc.constant(null) },
})

/** Shelves, and now and then all that can be inside. */
export const anyInterior: fc.Arbitrary<Interior> = anyOf<Interior>(
  [2, shelvesAlone],
  [
    1,
    fc.record(
      {
        ...{ fixedShelves: oneOf(0, 1, 2), adjustableShelves: oneOf(0, 1, 2) },
        partition: oneOf<Interior['partition']>(null, { at: 0.5 }, { at: 0.37 }),
        rollOuts: fc.record({ count: oneOf(1, 2), height: oneOf(80, 120) }),
        dividers: oneOf(2, 3),
        pipes: fc.record({ width: oneOf(150, 200), height: fc.constant(120), bottom: oneOf(200, 300) }),
      },
      { requiredKeys: ['fixedShelves', 'adjustableShelves', 'partition'] },
    ),
  ],
)

/** `rows (150 drawer, 1 part pair)`: as it is said from the top down, or from the left. */
export function saidFront(front: Front): string {
  const sized = (length: number | null, share: number | null, of: Front) =>
    `${length === null ? `${share} part` : length} ${saidFront(of)}`
  switch (front.kind) {
    case 'rows':
      return `rows (${front.rows.map(({ size, front: of }) => sized(size.kind === 'fixed' ? size.height : null, size.kind === 'share' ? size.share : null, of)).join(', ')})`
    case 'columns':
      return `columns (${front.columns.map(({ size, front: of }) => sized(size.kind === 'fixed' ? size.width : null, size.kind === 'share' ? size.share : null, of)).join(', ')})`
    case 'door':
      return `door hinged ${front.hinge}${front.orPair ? ' or pair' : ''}`
    default:
      return front.kind
  }
}
