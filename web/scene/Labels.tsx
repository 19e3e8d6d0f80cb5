import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useEffect, useMemo } from 'react'
import { Vector3 } from 'three'
import { type Derived, explodedBy, isRunId, type Vec3 } from '../../engine/index'
import type { Selection } from '../store/state'
import { useFollowing } from '../store/turns'
import { arrange, boxOfPart, standAt } from './arrange'
import { builtIn } from './built'
import { METRES } from './Camera'
import { litOf } from './lit'
import { isFront } from './merge'
import { middleOf, plus } from './space'
import { turned } from './walls'

export interface Label {
  readonly key: string
  readonly text: string
  readonly isLive: boolean
  readonly at: Vec3
}

/** Marks are written once boards stand far enough apart for a mark to name one board. */
const READABLE_APART = 0.3

/**
 * Closed, every cabinet has its mark at its lower front edge; apart, the boards of the cabinet that is selected have
 * theirs in their middle.
 */
export function labelsOf(derived: Derived, selection: Selection, explode: number, areFrontsHidden: boolean): Label[] {
  const chosen = chosenCabinets(selection)
  return arrange(derived).flatMap((stand): Label[] => {
    const { built } = stand
    const isChosen = chosen.includes(built.id)
    const base = standAt(stand, explode)
    if (isChosen && explode >= READABLE_APART) {
      return built.parts
        .filter((part) => !areFrontsHidden || !isFront(part.role))
        .map((part) => ({
          key: part.id,
          text: part.mark,
          isLive: selection.kind === 'part' && selection.part === part.id,
          at: plus(base, turned(plus(middleOf(boxOfPart(part)), explodedBy(part.explode, explode)), stand.turns)),
        }))
    }
    if (isRunId(built.id)) return []
    const { width, depth, height } = built.place
    const at = plus(base, turned({ x: width / 2, y: height - 70, z: depth + 25 }, stand.turns))
    return explode === 0 ? [{ key: built.id, text: built.mark, isLive: isChosen, at }] : []
  })
}

function chosenCabinets(selection: Selection): readonly string[] {
  if (selection.kind === 'cabinets') return selection.ids
  return selection.kind === 'part' ? [selection.owner] : []
}

/** The marks of all that is lit in the picture: cabinets or boards, apart by spaces. */
export function litMarks(derived: Derived, selection: Selection): string {
  const marks = builtIn(derived).flatMap((built) => {
    const lit = litOf(selection, derived, built)
    if (lit.kind === 'parts') return built.parts.filter(({ id }) => lit.parts.includes(id)).map(({ mark }) => mark)
    return lit.kind === 'whole' ? [built.mark] : []
  })
  return marks.join(' ')
}

/** Writes the marks into a layer of the page over the picture, and moves them with every frame that is drawn. */
export function Labels({
  layer,
  className,
  liveClass,
}: {
  layer: RefObject<HTMLDivElement | null>
  className: string
  liveClass: string
}) {
  const derived = useFollowing('scene', (state) => state.derived)
  const selection = useFollowing('scene', (state) => state.selection)
  const explode = useFollowing('scene', (state) => state.explode)
  const areFrontsHidden = useFollowing('scene', (state) => state.areFrontsHidden)
  const invalidate = useThree((state) => state.invalidate)
  const labels = useMemo(
    () => liveFirst(labelsOf(derived, selection, explode, areFrontsHidden)),
    [derived, selection, explode, areFrontsHidden],
  )
  const chosen = useMemo(() => litMarks(derived, selection), [derived, selection])
  useEffect(() => {
    const host = layer.current
    if (!host) return
    fillLayer(host, labels, className, liveClass)
    host.dataset.chosen = chosen
    invalidate()
  }, [labels, chosen, layer, className, liveClass, invalidate])
  const seen = useMemo(() => new Vector3(), [])
  useFrame(({ camera, size }) => {
    const marks = layer.current?.children
    const written: Written[] = []
    for (const [index, label] of labels.entries()) {
      const mark = marks?.[index]
      if (!(mark instanceof HTMLElement)) continue
      seen.set(label.at.x, label.at.y, label.at.z).multiplyScalar(METRES).project(camera)
      const x = ((seen.x + 1) / 2) * size.width
      const y = ((1 - seen.y) / 2) * size.height
      const place = { x, y, width: label.text.length * LETTER_PX }
      const isClear = !written.some((other) => doCross(place, other))
      if (isClear) written.push(place)
      mark.style.transform = `translate(-50%, -50%) translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`
      mark.style.visibility = isClear && seen.z < 1 ? 'visible' : 'hidden'
    }
  })
  return null
}

function liveFirst(labels: readonly Label[]): Label[] {
  return [...labels].sort((a, b) => Number(b.isLive) - Number(a.isLive))
}

/** Where a mark is written, by its middle, in pixels. */
interface Written {
  readonly x: number
  readonly y: number
  readonly width: number
}

/** Of the letters of a mark; near enough to keep marks apart without measuring the page in every frame. */
const LETTER_PX = 7
const LINE_PX = 13

/** Of marks that would lie over one another the first is written; nearer, there is room for more. */
function doCross(a: Written, b: Written): boolean {
  return Math.abs(a.x - b.x) < (a.width + b.width) / 2 && Math.abs(a.y - b.y) < LINE_PX
}

/** Keeps the marks that are there and writes only what differs. */
function fillLayer(host: HTMLElement, labels: readonly Label[], className: string, liveClass: string): void {
  while (host.children.length > labels.length) host.lastChild?.remove()
  while (host.children.length < labels.length) host.append(document.createElement('span'))
  for (const [index, label] of labels.entries()) {
    const mark = host.children[index]!
    if (mark.textContent !== label.text) mark.textContent = label.text
    const look = label.isLive ? `${className} ${liveClass}` : className
    if (mark.className !== look) mark.className = look
  }
}
