import type { RuleSet } from '../../engine/index'

interface Rules {
  readonly title: string
  /** Measures with their labels. */
  readonly rows: readonly (readonly [string, string])[]
}

/** The measures of build methods as they are called, by what they are of. */
export const RULES = {
  fronts: {
    title: 'Gaps of fronts, widest door',
    rows: [
      ['gap', 'Between fronts'],
      ['endReveal', 'At the ends'],
      ['topReveal', 'At the top'],
      ['bottomReveal', 'At the bottom'],
      ['widestDoor', 'Widest single door'],
    ],
  },
  banding: {
    title: 'Banding',
    rows: [
      ['carcass', 'Carcass edges'],
      ['fronts', 'Fronts, fillers, trims'],
    ],
  },
  shelves: {
    title: 'Loose shelves',
    rows: [
      ['sideClearance', 'Play in all'],
      ['setback', 'Setback'],
      ['pinDiameter', 'Pin diameter'],
      ['pinDepth', 'Pin depth'],
      ['pitch', 'Pitch of holes'],
      ['rowSetback', 'Rows from edges'],
      ['firstHole', 'First hole'],
    ],
  },
  drawers: {
    title: 'Drawers',
    rows: [
      ['bottomClearance', 'Free below'],
      ['topClearance', 'Free above'],
      ['lengthStep', 'Slides in steps of'],
      ['rearClearance', 'Free behind'],
      ['grooveDepth', 'Groove depth'],
      ['grooveUp', 'Groove up'],
      ['bottomPlay', 'Play of the bottom'],
    ],
  },
  hinge: {
    title: 'Hinges',
    rows: [
      ['firstFromEnd', 'First from the end'],
      ['cupDiameter', 'Cup diameter'],
      ['cupDepth', 'Cup depth'],
      ['cupFromEdge', 'Cup from the edge'],
      ['screwSpread', 'Screws apart'],
      ['screwBehind', 'Screws behind the cup'],
      ['screwDiameter', 'Screw holes'],
      ['screwDepth', 'Screw holes, depth'],
      ['plateFromFront', 'Plate from the front'],
      ['plateSpread', 'Plate holes apart'],
      ['plateDiameter', 'Plate holes'],
      ['plateDepth', 'Plate holes, depth'],
      ['plateLength', 'Plate length'],
      ['plateHeight', 'Plate height'],
      ['fixedDistance', 'Fixed distance'],
      ['halfCrank', 'Crank, half overlay'],
      ['fullCrank', 'Crank, inset'],
      ['sideAdjustment', 'Can be set by'],
      ['foldFromEdge', 'Folding leaves: plate from the edge'],
    ],
  },
  slides: {
    title: 'Slides',
    rows: [
      ['lineUp', 'Up from the box'],
      ['firstFromFront', 'First from the front'],
      ['pitch', 'Grid of screws'],
      ['holeDiameter', 'Hole diameter'],
      ['holeDepth', 'Hole depth'],
      ['setback', 'Undermount: set back'],
    ],
  },
  legs: {
    title: 'Legs',
    rows: [
      ['spacing', 'Apart at most'],
      ['fromEdge', 'First from the sides'],
      ['plateSpread', 'Screws of a plate apart'],
      ['screwDiameter', 'Screw holes'],
      ['screwDepth', 'Screw holes, depth'],
    ],
  },
  pockets: {
    title: 'Pocket screws',
    rows: [
      ['diameter', 'Pocket'],
      ['underHead', 'Wood under the head'],
      ['screwDiameter', 'Screw'],
      ['screwLength', 'Screw length'],
      ['fromEdge', 'Frames: first from the edge'],
      ['spacing', 'Frames: apart at most'],
    ],
  },
} as const satisfies Readonly<Record<RuleSet, Rules>>

/** What is chosen among the measures, and what is ticked. */
const WORDS: Readonly<Record<string, string>> = {
  'banding.ends': 'Ends of sides',
  'banding.isInFinishedSize': 'Boards are cut smaller by it',
  'shelves.balance': 'Rows of holes',
  'hinge.chart': 'How many',
  'slides.loadClass': 'A pair carries',
  'slides.extension': 'Drawers come out',
  'pockets.angle': 'Angle',
}

/** `shelves.setback` as `Loose shelves: Setback`; null where it is no measure. */
export function ruleLabel(name: string): string | null {
  const [set, measure] = name.split('.')
  if (!set || !measure || !Object.hasOwn(RULES, set)) return null
  const { title, rows }: Rules = RULES[set as RuleSet]
  return `${title}: ${WORDS[name] ?? rows.find(([one]) => one === measure)?.[1] ?? measure}`
}
