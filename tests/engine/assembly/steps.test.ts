import { describe, expect, it } from 'vitest'
import { assemblyOf } from '../../../engine/assembly/assemblyOf'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet } from '../../../engine/project/document'
import { USUAL_FIXINGS, USUAL_FRAME_FIXINGS } from '../../../engine/project/fixing'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../../engine/project/frames'
import { NOTHING_LATE } from '../../../engine/project/late'
import { aCabinet, type MethodChanges, rulesWith } from '../../helpers/cabinets'

function stepsOf(changes: MethodChanges, cabinet: Partial<Cabinet> = {}, late = NOTHING_LATE) {
  const rules = rulesWith(changes)
  const made = aCabinet('base', cabinet)
  const parts = partsOf(buildCabinet(made, rules), rules)
  return assemblyOf({
    cabinet: made,
    isFree: false,
    parts,
    late,
    work: rules.method,
    display: { unit: 'mm', step: 0.1 },
  })
}

const DADO: MethodChanges = {
  cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } },
  back: { kind: 'groove', depth: 6, inset: 10, clearance: 1.5 },
  banding: { carcass: 1, fronts: 1, isInFinishedSize: true },
}

describe('a cabinet after the saw', () => {
  it('is banded before its dados are cut, and bored before it is glued', () => {
    const steps = stepsOf(DADO, { front: { kind: 'drawer' } })
    const at = (words: string) => steps.findIndex(({ text }) => text.startsWith(words))
    expect([at('Band '), at('Cut '), at('Bore ')]).toEqual([0, 1, 2])
    expect(steps.findIndex(({ stage }) => stage === 'carcass')).toBe(3)
    expect(steps[1]!.text).toContain('B1-LS and B1-RS they run out through the banding')
  })

  it('has the tenons of its frame and of its doors cut with their mortises, and named for nothing else', () => {
    const joint = { kind: 'tenon', length: 15 } as const
    const steps = stepsOf(
      { ...DADO, faceFrame: { ...USUAL_FRAME, joint }, frontBuild: USUAL_FIVE_PART },
      { front: { kind: 'pair' } },
    )
    const marksIn = (words: string) => steps.filter(({ text }) => text.startsWith(words)).flatMap(({ marks }) => marks)
    const joints = marksIn('Groove the edges for panels and cut mortises and tenons')
    for (const mark of ['B1-TR', 'B1-BR', 'B1-ST1', 'B1-DL1', 'B1-DT1']) expect(joints).toContain(mark)
    const others = marksIn('Cut ')
    expect(others.length).toBeGreaterThan(0)
    expect(others.filter((mark) => /-(TR|BR|DL)/.test(mark))).toEqual([])
  })

  it('gets its fronts last, and is told only of those that it has', () => {
    const last = (front: Cabinet['front'], faceFrame: MethodChanges['faceFrame'] = null) =>
      stepsOf({ ...DADO, faceFrame }, { front }).at(-1)!.text
    const share = { kind: 'share', share: 1 } as const
    const sink = {
      kind: 'rows',
      rows: [
        { size: share, front: { kind: 'falseFront' } },
        { size: share, front: { kind: 'pair' } },
      ],
    } as const
    expect(last({ kind: 'drawer' })).toBe('Fronts last: screw drawer fronts to their boxes and make all gaps equal.')
    expect(last({ kind: 'pair' })).toBe('Fronts last: hang the doors and make all gaps equal.')
    expect(last(sink)).toBe(
      'Fronts last: hang the doors, screw what does not open on from inside and make all gaps equal.',
    )
    expect(last({ kind: 'drawer' }, USUAL_FRAME)).not.toContain('hinges')
    expect(last({ kind: 'pair' }, USUAL_FRAME)).toContain('their hinges are screwed to the frame')
  })

  it('has sides whose band goes over the ends of dados grooved and dadoed before that, and the others after it', () => {
    const steps = stepsOf({ ...DADO, dadoFront: { kind: 'covered' } }).filter(({ stage }) => stage === 'machining')
    const words = steps.map(({ text }) => text)
    expect(words.map((text) => text.split(' ').slice(0, 2).join(' '))).toEqual(['Cut the', 'Band the', 'Cut grooves'])
    expect(words[0]).toContain('the band of the front edge goes over the ends')
    expect(steps[0]!.marks).toEqual(['B1-LS', 'B1-RS'])
    expect(words[2]).toBe('Cut grooves after banding: all of them stop before a banded edge.')
    expect(steps[2]!.marks).toEqual(['B1-BT', 'B1-TP'])
  })

  it('has the bottom under an L rabbeted for its sides before the band of its inside corner covers the ends', () => {
    const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 580 } as const
    const steps = stepsOf({ ...DADO, bottom: 'under', dadoFront: { kind: 'covered' } }, { width: 920, corner })
    expect(steps[0]!.text).toContain('the band of the front edge goes over the ends')
    expect(steps[0]!.marks).toEqual(['B1-LS', 'B1-RS', 'B1-BT'])
  })

  it('has the sides over a slanting bottom notched to go in behind its band, and nothing called a stopped dado', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 860, otherDepth: 580 } as const
    const steps = stepsOf({ ...DADO, bottom: 'under', dadoFront: { kind: 'covered' } }, { width: 920, corner })
    const notched = steps.find(({ text }) => text.startsWith('Notch the front corners'))!
    expect(notched.text).toContain('behind the band of a slanting edge')
    expect(notched.marks).toEqual(['B1-LS', 'B1-RS', 'B1-TP'])
    expect(steps.filter(({ text }) => text.includes('stopped dados'))).toEqual([])
  })

  it('has what goes into stopped dados notched once these are cut and squared', () => {
    const steps = stepsOf({ ...DADO, dadoFront: { kind: 'stopped', behind: 10 } })
    const words = steps.filter(({ stage }) => stage === 'machining').map(({ text }) => text)
    expect(words.map((text) => text.split(' ').slice(0, 2).join(' '))).toEqual(['Band the', 'Cut grooves', 'Notch the'])
    expect(words[1]).toContain('Square the front ends of those that stop there with a chisel.')
    expect(words[1]).not.toContain('run out')
    expect(steps[2]!.marks).toEqual(['B1-BT', 'B1-TP'])
  })

  it('has the sides beside an inset diagonal door bevelled before their edges are banded, stiles of a frame after', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 580 } as const
    const order = (changes: MethodChanges) =>
      stepsOf({ ...DADO, ...changes }, { width: 900, front: { kind: 'door', hinge: 'left' }, corner })
        .filter(({ text }) => /^(Band|Bevel) /.test(text))
        .map(({ text, marks }) => `${text.split(' ')[0]} ${text.startsWith('Bevel') ? marks.join(' ') : 'edges'}`)
    expect(order({ frontMount: 'inset' })).toEqual(['Bevel B1-LS B1-RS', 'Band edges'])
    expect(order({ faceFrame: USUAL_FRAME })[0]).toBe('Band edges')
    expect(order({ faceFrame: USUAL_FRAME })[1]).toMatch(/^Bevel B1-LS B1-RS /)
  })

  it('has the frames of an L screwed on through its sides where those are bored for it', () => {
    const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 580 } as const
    const drives = (frameFixing: MethodChanges['frameFixing']) =>
      stepsOf({ faceFrame: USUAL_FRAME, frameFixing }, { width: 920, corner }).filter(({ text }) =>
        text.includes('Drive the screws of the sides, the bottom and the top into their members.'),
      ).length
    expect([drives(USUAL_FRAME_FIXINGS.pocketScrews), drives(USUAL_FRAME_FIXINGS.glue)]).toEqual([1, 0])
  })

  it('says what holds the frame of a diagonal until its glue is dry, since its sides are only glued to it', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 580 } as const
    const words = (frameFixing: MethodChanges['frameFixing'], said: Partial<Cabinet> = { width: 900, corner }) =>
      stepsOf({ faceFrame: USUAL_FRAME, frameFixing }, said).find(({ text }) => text.includes('up the face frame'))!
        .text
    const screwed = words(USUAL_FRAME_FIXINGS.pocketScrews)
    expect(screwed).toContain('only glued to B1-LS and B1-RS, which meet them too slantwise for screws')
    expect(screwed).toContain('the screws of the bottom and the top hold the frame there until the glue is dry')
    expect(screwed).toContain('a band clamp round the carcass')
    const glued = words(USUAL_FRAME_FIXINGS.glue)
    expect(glued).toContain('Nothing but glue holds it')
    expect(glued).toContain('a band clamp round the carcass')
    expect(glued).not.toContain('screws of the bottom')
    // Before a straight carcass bars hold it, and where it is screwed on the screws do.
    const straight = words(USUAL_FRAME_FIXINGS.glue, {})
    expect(straight).toContain('Clamp what is glued to the carcass until the glue is dry')
    expect(words(USUAL_FRAME_FIXINGS.pocketScrews, {})).not.toMatch(/until the glue is dry|band clamp/)
  })

  // Source: a drawer maker's page, 'Even a small error of 1/16 of an inch in any dimension can prevent the hardware from functioning'.
  it('has its drawer boxes measured across, since 1/16 in too much binds', () => {
    const [step] = stepsOf({}, { front: { kind: 'drawer' } }).filter(({ stage }) => stage === 'drawer boxes')
    expect(step!.text).toContain('and its width: 1.6 mm too much and its slides bind')
    expect(step!.text).toContain('left drawer side')
    expect(step!.text).toContain('right drawer side')
  })

  it('has a plinth glued and clamped, since nothing is bored to screw it', () => {
    const [step] = stepsOf({ floor: { kind: 'plinth', height: 100, setback: 60 } }).filter(({ text }) =>
      text.includes('plinth'),
    )
    expect(step!.text).toMatch(/^Glue the plinth together, square, and clamp it: nothing is bored to hold it besides/)
    expect(step!.marks).toHaveLength(4)
  })

  it('has a back in grooves in while gluing, and one that lies on it last, with equal diagonals', () => {
    const captive = stepsOf(DADO)
    const back = captive.find(({ marks }) => marks.includes('B1-BK') && marks.length === 1)!
    expect(back.text).toContain('now, while gluing: it cannot go in later')
    // The bottom goes into the side; nothing of the side goes into the bottom, though the back has a groove there.
    expect(captive.find(({ marks }) => marks.join() === 'B1-BT')!.text).toBe('Glue the bottom into B1-LS.')
    const applied = stepsOf({ back: { kind: 'applied', margin: 0 } }).filter(({ stage }) => stage === 'carcass')
    expect(applied.at(-1)!.text).toContain('The back last: lay it on')
    // The carcass is 600 wide and 720 high: the root of 600 x 600 + 720 x 720 is 937.2.
    expect(applied.at(-2)!.text).toContain(`${Math.round(Math.hypot(600, 720) * 10) / 10} mm each`)
    const rabbet = stepsOf({ back: { kind: 'rabbet', depth: 9 } }).filter(({ stage }) => stage === 'carcass')
    expect(rabbet.at(-1)!.text).toContain('into its rabbet')
  })

  it('is hung where it hangs, be it made as a base, and stood where it stands', () => {
    const standing = (cabinet: Partial<Cabinet>) =>
      stepsOf(DADO, cabinet)
        .filter(({ stage }) => stage === 'standing')
        .map(({ text }) => text)
        .join(' ')
    expect(standing({ bottom: 350 })).toMatch(/^Hang the carcass level/)
    expect(standing({ bottom: 0 })).toMatch(/^Stand the carcass level/)
  })

  it.each([
    ['none', 'and clamp it: nothing is bored to hold it besides', 'and clamp it: nothing is bored to hold it besides'],
    ['screws', 'clamp it and drive the screws through B1-LS.', 'clamp it and drive the screws through B1-RS.'],
    ['dowels', 'Glue the dowels of B1-BT in, set the bottom on them', 'Glue the dowels of B1-BT and B1-TP in'],
    ['looseTenons', 'Glue the loose tenons of B1-BT in, set', 'Glue the loose tenons of B1-BT and B1-TP in'],
    ['biscuits', 'Glue the biscuits of B1-BT in, set', 'Glue the biscuits of B1-BT and B1-TP in'],
    ['pocketScrews', 'drive the pocket screws of B1-BT.', 'drive the pocket screws of B1-BT and B1-TP.'],
  ] as const)('says of butted boards that are held by %s what is bored for them and no more', (kind, bottom, side) => {
    const steps = stepsOf({ fixing: USUAL_FIXINGS[kind] }).filter(({ stage }) => stage === 'carcass')
    const text = (mark: string) => steps.find(({ marks }) => marks.join() === mark)!.text
    expect(text('B1-BT')).toContain(bottom)
    expect(text('B1-RS')).toContain(side)
    if (kind !== 'screws' && kind !== 'pocketScrews') expect(steps.some(({ text }) => /screw/.test(text))).toBe(false)
  })

  it('has screws through what is let in as well, where they are bored', () => {
    const steps = stepsOf({ ...DADO, fixing: USUAL_FIXINGS.screws })
    expect(steps.find(({ marks }) => marks.join() === 'B1-BT')!.text).toBe(
      'Set the bottom into B1-LS. Glue, clamp and drive the screws through B1-LS.',
    )
  })

  it('has a fixed shelf that is pinned laid on its pins', () => {
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    const steps = stepsOf({ fixedShelf: 'pinned' }, { interior })
    expect(steps.find(({ marks }) => marks.join() === 'B1-FS')!.text).toBe(
      'Lay the fixed shelf on the pins, up to the back.',
    )
  })

  it('has its tray dividers in before the carcass is closed', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 0, partition: null, dividers: 3 }
    const carcass = stepsOf(DADO, { front: { kind: 'pair' }, interior }).filter(({ stage }) => stage === 'carcass')
    const dividers = carcass.findIndex(({ marks }) => marks.includes('B1-TD1'))
    const closing = carcass.findIndex(({ marks }) => marks.includes('B1-RS'))
    expect(dividers).toBeGreaterThanOrEqual(0)
    expect(dividers).toBeLessThan(closing)
  })

  it('has its boxes after it stands, with the bottom in before they are closed, and its fronts last', () => {
    const steps = stepsOf(DADO, { front: { kind: 'drawer' } })
    const stages = steps.map(({ stage }) => stage)
    expect(stages.indexOf('drawer boxes')).toBeGreaterThan(stages.indexOf('standing'))
    expect(steps.find(({ stage }) => stage === 'drawer boxes')!.text).toContain('before the last board closes them')
    expect(steps.at(-1)!.marks).toEqual(['B1-DF'])
  })

  it('works late parts when its openings are measured, and not before', () => {
    const late = { ...NOTHING_LATE, fronts: true }
    const steps = stepsOf(DADO, { front: { kind: 'pair' } }, late)
    const standing = steps.findIndex(({ stage }) => stage === 'standing')
    expect(steps[standing]!.text).toContain('Measure its openings, type them in')
    const doors = (from: number, to?: number) =>
      steps.slice(from, to).filter(({ stage, marks }) => stage === 'machining' && marks.includes('B1-DR1')).length
    expect([doors(0, standing), doors(standing)]).toEqual([0, 2])
  })

  it('takes up every board once between the carcass and the fronts', () => {
    const parts = stepsOf(DADO, { front: { kind: 'drawer' } })
      .filter(({ stage }) => stage === 'carcass')
      .flatMap((step) => step.marks)
    expect([...parts].sort()).toEqual(['B1-BK', 'B1-BT', 'B1-LS', 'B1-RS', 'B1-TP'])
  })
})
