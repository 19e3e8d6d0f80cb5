import { expect } from 'vitest'
import { begin, type CabinetKind, type History, make, type Project, undo, undoLabel } from '../../../engine/index'
import {
  type Edge,
  type Hand,
  type HandEvent,
  type Held,
  IDLE,
  NOTHING_HELD,
  type Reply,
  type Spot,
  type Target,
} from '../../../web/input/hand'
import { replyTo } from '../../../web/input/reply'
import { idOf } from './wall'

/** A tenth of a pixel for a millimetre, so that 8 px reach over 80 mm. */
const ZOOM = 0.1

/** Leads gestures on a wall without a browser: presses, drags and lets go as a hand would. */
export class Desk {
  private history: History
  private hand: Hand = IDLE
  private selected: readonly string[] = []
  private at = { x: 0, y: 0 }
  private last: Reply | null = null
  private held: Held = NOTHING_HELD
  private readonly start: Project

  constructor(
    project: Project,
    private readonly reach = 0,
  ) {
    this.start = project
    this.history = begin(project)
  }

  get present(): Project {
    return this.history.present
  }

  /** Presses on a cabinet at a distance from the left wall end. */
  press(mark: string, x: number, y = 300): this {
    return this.down({ kind: 'cabinet', id: idOf(mark) }, x, y)
  }

  pressEdge(mark: string, edge: Edge, x: number, y = 300): this {
    return this.down({ kind: 'handle', id: idOf(mark), edge }, x, y)
  }

  /** On the dividing line after the row or column at a path. */
  pressDivider(mark: string, path: string, x: number, y = 300): this {
    return this.down({ kind: 'divider', id: idOf(mark), path }, x, y)
  }

  pressWall(x: number, y: number): this {
    return this.down({ kind: 'wall' }, x, y)
  }

  pressTray(cabinet: CabinetKind): this {
    return this.down({ kind: 'tray', cabinet }, -900, 2300)
  }

  hold(held: Partial<Held>): this {
    this.held = { ...NOTHING_HELD, ...held }
    return this
  }

  select(...marks: readonly string[]): this {
    this.selected = marks.map(idOf)
    return this
  }

  dragTo(x: number, y = this.at.y): this {
    this.at = { x, y }
    return this.send({ kind: 'move', at: this.spot(), held: this.held })
  }

  release(): this {
    return this.send({ kind: 'release', at: this.spot(), held: this.held })
  }

  escape(): this {
    return this.send({ kind: 'cancel' })
  }

  expectPlace(mark: string, left: number, width: number): this {
    const { left: isLeft, width: isWide } = this.history.present.cabinets[idOf(mark)]!
    expect({ left: isLeft, width: isWide }).toEqual({ left, width })
    return this
  }

  expectBottom(mark: string, bottom: number): this {
    expect(this.history.present.cabinets[idOf(mark)]!.bottom).toBe(bottom)
    return this
  }

  expectCabinets(count: number): this {
    expect(Object.keys(this.history.present.cabinets)).toHaveLength(count)
    return this
  }

  expectWords(words: string, fits = true): this {
    expect(this.last?.outcome.words).toEqual({ fits, text: words })
    return this
  }

  expectSaid(said: string | null): this {
    expect(this.last?.said).toBe(said)
    return this
  }

  expectGuides(...to: readonly string[]): this {
    expect(this.last?.outcome.guides.map((guide) => guide.to)).toEqual(to)
    return this
  }

  expectPick(pick: Reply['pick']): this {
    expect(this.last?.pick).toEqual(pick)
    return this
  }

  /** One step for each label, and walking them back gives the very project that it began with. */
  expectUndoSteps(...labels: readonly string[]): this {
    expect(this.history.past.map(({ label }) => label)).toEqual(labels)
    let back = this.history
    while (undoLabel(back) !== null) back = undo(back)
    expect(back.present).toBe(this.start)
    return this
  }

  private down(on: Target, x: number, y: number): this {
    this.at = { x, y }
    return this.send({ kind: 'press', on, at: this.spot(), held: this.held })
  }

  private spot(): Spot {
    const { x, y } = this.at
    return { x, y, px: x * ZOOM, py: -y * ZOOM }
  }

  private send(event: HandEvent): this {
    const selected = this.selected.map(idOf)
    const desk = { project: this.history.present, wall: null, selected, reach: this.reach, slopPx: 4 }
    const reply = replyTo(this.hand, event, desk)
    this.hand = reply.hand
    this.last = reply
    if (reply.commit) this.history = make(this.history, reply.commit, reply.label)
    if (reply.pick?.kind === 'many') this.selected = reply.pick.ids
    return this
  }
}
