import { type DerivedCabinet, type Part, toCabinet } from '../../engine/index'
import styles from './Elevation.module.css'

interface FrameDrawingProps {
  readonly built: DerivedCabinet
}

/** Mid rails and mullions end at what they meet, and stiles run past rails: their tenons are not seen. */
const OF_FACE_FRAME: readonly Part['role'][] = ['stile', 'topRail', 'bottomRail', 'midRail', 'mullion']
const OF_FRONTS: readonly Part['role'][] = ['doorStile', 'doorRail', 'drawerStile', 'drawerRail']

/** The members of the face frame, under the fronts. */
export function FaceFrameDrawing({ built }: FrameDrawingProps) {
  return built.parts
    .filter(({ role }) => OF_FACE_FRAME.includes(role))
    .map((part) => <Member key={part.id} part={part} className={styles.front} />)
}

/** The stiles and rails of five-part fronts, over their panels. */
export function FivePartDrawing({ built }: FrameDrawingProps) {
  return built.parts
    .filter(({ role }) => OF_FRONTS.includes(role))
    .map((part) => <Member key={part.id} part={part} className={styles.member} />)
}

function Member({ part, className }: { readonly part: Part; readonly className: string | undefined }) {
  const { x, y, width, height } = seenRect(part)
  return <rect className={className} x={x} y={-(y + height)} width={width} height={height} />
}

/** A member without its tenons, in the frame of the cabinet: as wide as it looks where it stands aslant or on edge. */
function seenRect({ placement, length, width, thickness, operations }: Part) {
  const tenon = operations.find((one) => one.kind === 'rabbet' && one.x === 0)
  const hidden = tenon?.kind === 'rabbet' ? tenon.length : 0
  const bevel = operations.find(({ kind }) => kind === 'bevel')
  // A bevelled edge of a frame's stile is cut back at its face.
  const backAt = (edge: 'low' | 'high') => (bevel?.kind === 'bevel' && bevel.edge === edge ? bevel.by : 0)
  const corners = [hidden, length - hidden].flatMap((along) => [
    ...[backAt('low'), width - backAt('high')].map((across) => toCabinet(placement, along, across, 0)),
    ...[0, width].map((across) => toCabinet(placement, along, across, thickness)),
  ])
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)]
  const [x, y] = [Math.min(...xs), Math.min(...ys)]
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y }
}
