import { Canvas, type RootState, useThree } from '@react-three/fiber'
import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useLayoutEffect, useRef } from 'react'
import { useFollowing } from '../store/turns'
import { type CameraHands, CameraRig } from './Camera'
import { pictureWords } from './caption'
import { Fineness } from './Fineness'
import { keyDeed, rayAt, selectAlong } from './gestures'
import { Labels } from './Labels'
import { quietThree } from './quiet'
import { Run } from './Run'
import styles from './Scene.module.css'

quietThree()

/** Below this a press is a click and not a turn of the view. */
const SLOP_PX = 4

export interface PictureProps {
  readonly hands: RefObject<CameraHands | null>
  /** The picture stands in its pane, for the first time or at a new size. */
  readonly onSized: () => void
  readonly onLost: () => void
  readonly onRestored: () => void
  readonly onFitKey: () => void
  /** Whether it may be printed: what is drawn is kept for the paper, which costs a copy of every frame. */
  readonly isForPaper: boolean
  /** Without a graphics card the processor draws, and is spared where it can be. */
  readonly hasCard: boolean
}

/** The drawn picture with its pointer and keyboard: drag turns, wheel and pinch go nearer, a click picks a board. */
export function Picture({ hands, onSized, onLost, onRestored, onFitKey, isForPaper, hasCard }: PictureProps) {
  const root = useRef<RootState | null>(null)
  const layer = useRef<HTMLDivElement>(null)
  const press = useRef<{ x: number; y: number } | null>(null)
  const words = useFollowing('scene', (state) => pictureWords(state.derived, state.explode, state.areFrontsHidden))

  function pressed(event: PointerEvent) {
    press.current = event.isPrimary && event.button === 0 ? { x: event.clientX, y: event.clientY } : null
  }

  function released(event: PointerEvent) {
    const from = press.current
    press.current = null
    if (!from || !root.current || Math.hypot(event.clientX - from.x, event.clientY - from.y) >= SLOP_PX) return
    const { camera, gl } = root.current
    selectAlong(rayAt(camera, gl.domElement, event.clientX, event.clientY))
  }

  function keyed(event: KeyboardEvent) {
    if (!hands.current || event.altKey || event.ctrlKey || event.metaKey) return
    const deed = keyDeed(event.key, hands.current, onFitKey)
    if (!deed) return
    event.preventDefault()
    event.stopPropagation()
    deed()
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: a picture that is turned by keys is no set of fields
    <div
      className={styles.picture}
      role="group"
      aria-label="3D view: arrow keys turn it, plus and minus go nearer and further, 0 fits it"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys named in the label need the focus
      tabIndex={0}
      onPointerDown={pressed}
      onPointerUp={released}
      onKeyDown={keyed}
    >
      <Canvas
        role="img"
        aria-label={words}
        className={styles.canvas}
        frameloop="demand"
        dpr={[1, 2]}
        flat
        camera={{ fov: 28, near: 0.05, far: 100, position: [4, 3, 7] }}
        gl={{ alpha: true, antialias: hasCard, powerPreference: 'low-power', preserveDrawingBuffer: isForPaper }}
        onCreated={(state) => {
          root.current = state
        }}
      >
        <CameraRig hands={hands} />
        {!hasCard && <Fineness />}
        <Run />
        <Labels layer={layer} className={styles.mark!} liveClass={styles.liveMark!} />
        <Watch onSized={onSized} onLost={onLost} onRestored={onRestored} />
      </Canvas>
      <div className={styles.marks} ref={layer} aria-hidden="true" />
    </div>
  )
}

/** Tells of a new size, and of the graphics being taken away and given back. */
function Watch({ onSized, onLost, onRestored }: Pick<PictureProps, 'onSized' | 'onLost' | 'onRestored'>) {
  const size = useThree((state) => state.size)
  const canvas = useThree((state) => state.gl.domElement)
  const invalidate = useThree((state) => state.invalidate)
  const told = useRef({ onSized, onLost, onRestored })
  useLayoutEffect(() => {
    told.current = { onSized, onLost, onRestored }
  })
  useEffect(() => told.current.onSized(), [size.width, size.height])
  useEffect(() => {
    const lost = () => told.current.onLost()
    const restored = () => {
      told.current.onRestored()
      invalidate()
    }
    canvas.addEventListener('webglcontextlost', lost)
    canvas.addEventListener('webglcontextrestored', restored)
    return () => {
      canvas.removeEventListener('webglcontextlost', lost)
      canvas.removeEventListener('webglcontextrestored', restored)
    }
  }, [canvas, invalidate])
  return null
}
