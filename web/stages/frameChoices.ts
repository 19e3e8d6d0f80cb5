import {
  type FaceFrame,
  type FrontBuild,
  type MethodChoices,
  type Mm,
  type PanelWood,
  USUAL_FIVE_PART,
  USUAL_FRAME,
  USUAL_MOISTURE,
  USUAL_OVERLAY,
  USUAL_TENON,
  WOODS,
} from '../../engine/index'
import type { ChoiceOf, Measure } from './choiceOf'

/** Two words of a way: how fronts sit on the frame, and how its members are joined. */
function frameOf(way: string, before: FaceFrame): FaceFrame {
  const [fronts, joint] = way.split(' ')
  return {
    ...before,
    fronts:
      fronts === 'inset'
        ? { kind: 'inset' }
        : before.fronts.kind === 'overlay'
          ? before.fronts
          : { kind: 'overlay', by: USUAL_OVERLAY },
    joint:
      joint === 'screws'
        ? { kind: 'pocketScrews' }
        : before.joint.kind === 'tenon'
          ? before.joint
          : { kind: 'tenon', length: USUAL_TENON },
  }
}

const FRAME_MEASURES = [
  ['stile', 'Frame stiles'],
  ['topRail', 'Top rail'],
  ['upperTopRail', 'Top rail of uppers'],
  ['bottomRail', 'Bottom rail'],
  ['mullion', 'Mullions, mid rails'],
  ['pastLeft', 'Past the left side'],
  ['pastRight', 'Past the right side'],
  ['proud', 'Rail proud of the bottom'],
] as const

export const faceFrame: ChoiceOf<FaceFrame | null> = {
  label: 'Face frame',
  ways: [
    ['none', 'none'],
    ['inset screws', 'inset fronts, pocket screws'],
    ['inset tenon', 'inset fronts, tenons'],
    ['overlay screws', 'overlay fronts, pocket screws'],
    ['overlay tenon', 'overlay fronts, tenons'],
  ],
  wayOf: (frame) => (frame ? `${frame.fronts.kind} ${frame.joint.kind === 'tenon' ? 'tenon' : 'screws'}` : 'none'),
  make: (way, before) => (way === 'none' ? null : frameOf(way, before ?? USUAL_FRAME)),
  measures(frame) {
    if (!frame) return []
    const { fronts, joint } = frame
    const cover = (by: Mm): FaceFrame => ({ ...frame, fronts: { kind: 'overlay', by } })
    const tenon = (length: Mm): FaceFrame => ({ ...frame, joint: { kind: 'tenon', length } })
    return [
      ...(fronts.kind === 'overlay' ? [{ label: 'Overlay', value: fronts.by, put: cover }] : []),
      ...(joint.kind === 'tenon' ? [{ label: 'Tenon', value: joint.length, put: tenon }] : []),
      ...FRAME_MEASURES.map(([name, label]): Measure<FaceFrame> => {
        return { label, value: frame[name] ?? frame.topRail, put: (length) => ({ ...frame, [name]: length }) }
      }),
    ]
  },
}

const MID_RAIL = { spoken: 'The height of doors without a mid rail', least: 0, most: 4000 } as const

export const frontBuild: ChoiceOf<FrontBuild> = {
  label: 'Doors',
  ways: [
    ['slab', 'of one board'],
    ['fivePart doors', 'five-part'],
    ['fivePart all', 'five-part, drawer fronts too'],
  ],
  wayOf: (build) => (build.kind === 'slab' ? 'slab' : `fivePart ${build.areDrawersToo ? 'all' : 'doors'}`),
  make(way, before) {
    if (way === 'slab') return { kind: 'slab' }
    const usual = before.kind === 'fivePart' ? before : USUAL_FIVE_PART
    return { ...usual, areDrawersToo: way === 'fivePart all' }
  },
  measures(build) {
    if (build.kind === 'slab') return []
    const rows = [
      ['stile', 'Door stiles'],
      ['rail', 'Door rails'],
      ['groove', 'Panel groove'],
      ['play', 'Panel play'],
    ] as const
    const midRail: Measure<FrontBuild> = {
      label: 'Mid rail in doors above (0 for none)',
      value: build.midRailFrom ?? 0,
      put: (midRailFrom) => ({ ...build, midRailFrom }),
      limits: MID_RAIL,
    }
    const all = rows.map(([name, label]): Measure<FrontBuild> => {
      return { label, value: build[name], put: (length) => ({ ...build, [name]: length }) }
    })
    return [...all, midRail]
  },
}

/** A wood that is not on the list is called by what it moves. */
const OTHER = 'other'

export const panelWood: ChoiceOf<PanelWood> = {
  label: 'Panels',
  ways: [
    ['sheet', 'sheet goods'],
    ...WOODS.map(([name]) => [name, `solid ${name}`] as const),
    [OTHER, 'solid, another wood'],
  ],
  wayOf(wood) {
    if (wood.kind === 'sheet') return 'sheet'
    return WOODS.find(([, across]) => across === wood.across)?.[0] ?? OTHER
  },
  make(way, before) {
    if (way === 'sheet') return { kind: 'sheet' }
    const moisture = before.kind === 'solid' ? before.moisture : USUAL_MOISTURE
    // Of another wood nothing is known: half way between those of the list, until it is typed.
    const across = WOODS.find(([name]) => name === way)?.[1] ?? 0.003
    return { kind: 'solid', across, moisture }
  },
  measures(wood) {
    if (wood.kind === 'sheet') return []
    const own: Measure<PanelWood> = {
      label: 'Moves, % per %',
      value: Number((wood.across * 100).toFixed(4)),
      put: (percent) => ({ ...wood, across: Number((percent / 100).toFixed(6)) }),
      number: { least: 0, most: 2 },
    }
    return [
      ...(panelWood.wayOf(wood) === OTHER ? [own] : []),
      {
        label: 'Moisture, %',
        value: wood.moisture,
        put: (moisture) => ({ ...wood, moisture }),
        number: { least: 0, most: 30 },
      },
    ]
  },
}

/**
 * Whether a choice says nothing as things are: how fronts sit on a carcass that has a frame, of what panels are where there are
 * none, how dados end where none are seen.
 */
export function isIdle(name: string, choices: readonly MethodChoices[]): boolean {
  const all = (holds: (choice: MethodChoices) => boolean) => choices.every(holds)
  switch (name) {
    case 'frontMount':
      return all((choice) => choice.faceFrame !== null)
    case 'dadoFront':
      return all(
        ({ faceFrame, cornerJoint, fixedShelf }) =>
          faceFrame !== null || (cornerJoint.kind === 'butt' && fixedShelf === 'pinned'),
      )
    case 'frameMaterial':
    case 'frameFixing':
      return all((choice) => choice.faceFrame === null)
    case 'panelWood':
    case 'panelMaterial':
      return all((choice) => choice.frontBuild.kind === 'slab')
    default:
      return false
  }
}
