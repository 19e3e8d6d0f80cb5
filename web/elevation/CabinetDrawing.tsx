import { memo } from 'react'
import {
  childrenOf,
  type DerivedCabinet,
  type Front,
  type FrontFace,
  type Mm,
  type Part,
  rightOf,
} from '../../engine/index'
import { ApplianceDrawing } from './ApplianceDrawing'
import styles from './Elevation.module.css'
import { FaceFrameDrawing, FivePartDrawing } from './FrameDrawing'
import { MARK_PX, markPlace } from './markPlace'
import { Pulls } from './Pulls'
import { drawerLine, isBoredForPulls, pullsBefore } from './pullShapes'

interface CabinetDrawingProps {
  readonly built: DerivedCabinet
  /** How high the kick or plinth is under the box. */
  readonly kick: Mm
  /** Millimetres for a pixel: letters and strokes keep their size at any zoom. */
  readonly mmPerPx: number
  readonly look: 'plain' | 'chosen' | 'lit' | 'wrong'
  /** `B2 base, 600 wide, 2 of 5`. */
  readonly label: string
}

/** A cabinet seen from the room. It is drawn again only when it, the zoom or its look has changed. */
export const CabinetDrawing = memo(function CabinetDrawing(props: CabinetDrawingProps) {
  const { built, kick, mmPerPx, look, label } = props
  const { id, left, bottom } = built.cabinet
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing.
    <g
      role="button"
      tabIndex={0}
      aria-label={isOwn(built) ? `${label}, built differently` : label}
      aria-pressed={look === 'chosen'}
      data-cabinet={id}
      className={`${styles.cabinet} ${styles[look]}`}
      transform={`translate(${left} ${-bottom})`}
    >
      <Face built={built} kick={kick} mmPerPx={mmPerPx} />
    </g>
  )
})

type FaceProps = Pick<CabinetDrawingProps, 'built' | 'kick' | 'mmPerPx'>

/** What is seen of a cabinet in its own frame. One that is only pushed along keeps its boards, and so its face. */
const Face = memo(function Face({ built, kick, mmPerPx }: FaceProps) {
  const { width, space } = built.cabinet
  const isNamed = width / mmPerPx > 20
  return (
    <>
      {space ? (
        <ApplianceDrawing built={built} kick={kick} mmPerPx={mmPerPx} />
      ) : (
        <Box built={built} kick={kick} mmPerPx={mmPerPx} />
      )}
      {built.parts.filter(isBeside).map((part) => (
        <BesideDrawing key={part.id} part={part} />
      ))}
      {isNamed && <Mark built={built} kick={kick} mmPerPx={mmPerPx} />}
    </>
  )
}, isSameFace)

function Mark({ built, kick, mmPerPx }: FaceProps) {
  const { width, height } = built.cabinet
  const isDifferent = isOwn(built)
  const letters = built.mark.length + (isDifferent ? 2 : 0)
  const { x, y } = markPlace({ letters, width, height, kick, mmPerPx }, pullsBefore(built, mmPerPx))
  return (
    <text className={styles.mark} x={x} y={-y} fontSize={MARK_PX * mmPerPx} strokeWidth={HALO_PX * mmPerPx}>
      {built.mark}
      {isDifferent && <tspan className={styles.own}> *</tspan>}
    </text>
  )
}

/** The box of a cabinet with what is before and, where it is open, in it. */
function Box({ built, kick, mmPerPx }: FaceProps) {
  const { width, height } = built.cabinet
  const isBored = isBoredForPulls(built.parts)
  const isHollow = hasOpenPlace(built.cabinet.front)
  return (
    <>
      {kick > 0 && <rect className={styles.kick} x={0} y={-kick} width={width} height={kick} />}
      <rect
        className={`${styles.carcass} ${isHollow ? styles.hollow : ''}`}
        x={0}
        y={-height}
        width={width}
        height={Math.max(0, height - kick)}
      />
      <Lid built={built} />
      {isHollow && <Shelves built={built} />}
      <FaceFrameDrawing built={built} />
      {built.fronts.map((front, at) => (
        <FrontDrawing key={at} front={front} mmPerPx={mmPerPx} isBored={isBored} />
      ))}
      <OtherLeg built={built} kick={kick} />
      <FivePartDrawing built={built} />
      <Pulls parts={built.parts} />
    </>
  )
}

function isSameFace(a: FaceProps, b: FaceProps): boolean {
  return (
    a.built.parts === b.built.parts && a.built.mark === b.built.mark && a.kick === b.kick && a.mmPerPx === b.mmPerPx
  )
}

/** Whether it is built otherwise than its method says. */
function isOwn({ cabinet }: DerivedCabinet): boolean {
  return Object.keys(cabinet.overrides).length > 0
}

function isBeside({ role }: Part): boolean {
  return role === 'filler' || role === 'leftEnd' || role === 'rightEnd'
}

/** A filler or a finished end from the room; where the kick is cut out of an end, only what stands above it. */
function BesideDrawing({ part }: { readonly part: Part }) {
  const { placement, length, width, thickness, operations, role } = part
  const { x, y } = placement.origin
  const notch = operations.find(({ kind }) => kind === 'notch')
  const cut = notch?.kind === 'notch' ? notch.length : 0
  const across = role === 'filler' ? width : thickness
  return (
    <rect
      className={styles.front}
      x={role === 'rightEnd' ? x - across : x}
      y={-(y + length)}
      width={across}
      height={length - cut}
    />
  )
}

/** Of a corner the side at the end of its other leg stands before the rest, and the leaf hung to the door on edge beside it. */
function OtherLeg({ built, kick }: { readonly built: DerivedCabinet; readonly kick: Mm }) {
  const { corner, width, height } = built.cabinet
  if (!corner) return null
  const left = corner.hand === 'left' ? 0 : width - corner.otherDepth
  const leaf = corner.kind === 'L' ? built.parts.filter(({ role }) => role === 'door')[1] : undefined
  const thickness = leaf?.thickness ?? 0
  const leafLeft = corner.hand === 'left' ? corner.otherDepth : left - thickness
  return (
    <>
      <rect className={styles.front} x={left} y={-height} width={corner.otherDepth} height={height - kick} />
      {leaf && (
        <rect
          className={styles.front}
          x={leafLeft}
          y={-(leaf.placement.origin.y + leaf.length)}
          width={thickness}
          height={leaf.length}
        />
      )}
    </>
  )
}

/** A lid lies over the carcass. */
function Lid({ built }: { readonly built: DerivedCabinet }) {
  const lid = built.parts.find(({ role }) => role === 'lid')
  if (!lid) return null
  const top = built.cabinet.height + lid.thickness
  return <rect className={styles.front} x={0} y={-top} width={built.cabinet.width} height={lid.thickness} />
}

/** Around the letters of a mark, half of it at each side. */
const HALO_PX = 4

interface FrontDrawingProps {
  readonly front: FrontFace
  readonly mmPerPx: number
  /** Its pulls are drawn where they are; a drawer without any is told from a door by a short line. */
  readonly isBored: boolean
}

function FrontDrawing({ front, mmPerPx, isBored }: FrontDrawingProps) {
  const { left, bottom, width, height } = front.rect
  const [top, low, right] = [-(bottom + height), -bottom, left + width]
  const line = drawerLine(front.rect, mmPerPx)
  const y = -(line.bottom + line.height / 2)
  return (
    <>
      <rect className={styles.front} x={left} y={top} width={width} height={height} />
      {front.hinge && <path className={styles.hinge} d={hingePath(front, top, low, right)} />}
      {front.kind === 'drawer' && !isBored && (
        <line className={styles.pull} x1={line.left} x2={rightOf(line)} y1={y} y2={y} />
      )}
    </>
  )
}

/** Dashes that meet at the hinges, as shop drawings have them. */
function hingePath({ hinge, rect }: FrontFace, top: Mm, low: Mm, right: Mm): string {
  if (hinge === 'top') return `M${rect.left} ${low}L${(rect.left + right) / 2} ${top}L${right} ${low}`
  const [hung, free] = hinge === 'left' ? [rect.left, right] : [right, rect.left]
  return `M${free} ${top}L${hung} ${(top + low) / 2}L${free} ${low}`
}

function hasOpenPlace(front: Front): boolean {
  return front.kind === 'open' || front.kind === 'appliance' || childrenOf(front).some((one) => hasOpenPlace(one.front))
}

/** What is seen through open places: shelves from the front, and partitions on end. */
function Shelves({ built }: { readonly built: DerivedCabinet }) {
  const shelves = built.parts.filter(({ role }) => role === 'fixedShelf' || role === 'adjustableShelf')
  const partitions = built.parts.filter(({ role }) => role === 'partition' || role === 'divider')
  const uprights = partitions.map(({ id, placement: { origin }, length, thickness }) => (
    <rect key={id} className={styles.front} x={origin.x} y={-(origin.y + length)} width={thickness} height={length} />
  ))
  const lines = shelves.map(({ id, placement, length }) => (
    <line
      key={id}
      className={styles.front}
      x1={placement.origin.x}
      x2={placement.origin.x + length}
      y1={-placement.origin.y}
      y2={-placement.origin.y}
    />
  ))
  return [...uprights, ...lines]
}
