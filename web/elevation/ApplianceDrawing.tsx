import type { Appliance, DerivedCabinet, Mm } from '../../engine/index'
import { applianceName } from '../../engine/index'
import styles from './Elevation.module.css'

interface ApplianceDrawingProps {
  readonly built: DerivedCabinet
  /** How high the kick board before it is; 0 where none goes on. */
  readonly kick: Mm
  readonly mmPerPx: number
}

/** Of a letter of its name, so that the name is left out where it would stand out at both sides. */
const LETTER_PX = 6.4

/** A free place with the appliance in it, in the middle of its play, told from cabinets by its sign and its name. */
export function ApplianceDrawing({ built, kick, mmPerPx }: ApplianceDrawingProps) {
  const { width, height, space } = built.cabinet
  if (!space) return null
  const boxes = built.bodies ?? []
  const [body] = boxes
  const name = applianceName(space.of)
  const isNamed = width / mmPerPx > name.length * LETTER_PX
  return (
    <>
      <rect className={`${styles.carcass} ${styles.free}`} x={0} y={-height} width={width} height={height} />
      {boxes.map(({ min, max }) => (
        <rect
          key={min.y}
          className={styles.appliance}
          x={min.x}
          y={-max.y}
          width={max.x - min.x}
          height={max.y - min.y}
        />
      ))}
      {kick > 0 && <rect className={styles.kick} x={0} y={-kick} width={width} height={kick} />}
      {body && (
        <path
          className={styles.sign}
          transform={`translate(${body.min.x} ${-body.max.y})`}
          d={signOf(space.of, body.max.x - body.min.x, body.max.y - body.min.y)}
        />
      )}
      {isNamed && (
        <text
          className={styles.applianceName}
          x={width / 2}
          y={-kick - 26 * mmPerPx}
          fontSize={11.5 * mmPerPx}
          strokeWidth={4 * mmPerPx}
          textAnchor="middle"
        >
          {name}
        </text>
      )}
    </>
  )
}

/** The outline that each is known by, from its upper left corner: a door with its grip, a drum, a tall grip, an oven under rings. */
function signOf(of: Appliance, width: Mm, height: Mm): string {
  const panel = Math.min(120, height / 6)
  const middle = width / 2
  const circle = (x: Mm, y: Mm, radius: Mm) =>
    `M${x - radius} ${y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`
  switch (of) {
    case 'dishwasher':
      return `M0 ${panel}H${width}M${width * 0.25} ${panel * 1.4}H${width * 0.75}`
    case 'washingMachine': {
      const radius = Math.min(width, height - panel) * 0.3
      return `M0 ${panel}H${width}${circle(middle, panel + (height - panel) * 0.45, radius)}${circle(width * 0.85, panel / 2, panel * 0.25)}`
    }
    case 'fridge':
      return `M${width * 0.1} ${height * 0.12}V${height * 0.45}M0 ${height * 0.55}H${width}`
    case 'range': {
      const knobs = [0.15, 0.35, 0.65, 0.85].map((share) => circle(width * share, panel / 2, panel * 0.22)).join('')
      return `M0 ${panel}H${width}${knobs}M${width * 0.15} ${panel * 2}H${width * 0.85}V${height * 0.7}H${width * 0.15}Z`
    }
  }
}
