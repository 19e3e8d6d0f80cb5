import { useCallback, useRef, useState } from 'react'
import { Bar, CaptionLine } from './Bar'
import type { CameraHands } from './Camera'
import { useFitting } from './fitting'
import { type Graphics, graphicsHere } from './graphics'
import { Picture, type PictureProps } from './Picture'
import { Safely } from './Safely'
import styles from './Scene.module.css'

interface Drawing {
  readonly isOn: boolean
  readonly graphics: Graphics
  /** Counts from 1; a new attempt is a new canvas. 0 while the browser has never given us one. */
  readonly attempt: number
}

/** The run in 3D, filling its pane. A picture that cannot be drawn says so, and nothing else suffers. */
export function Scene({ isForPaper = false }: Partial<Pick<PictureProps, 'isForPaper'>>) {
  const hands = useRef<CameraHands | null>(null)
  const fitting = useFitting(hands)
  const [drawing, setDrawing] = useState(firstAttempt)
  const turn = useCallback((isOn: boolean) => setDrawing((before) => ({ ...before, isOn })), [])
  function tryAgain() {
    const graphics = graphicsHere()
    if (graphics !== 'none') setDrawing(({ attempt }) => ({ isOn: true, graphics, attempt: attempt + 1 }))
  }
  return (
    <section className={styles.scene} aria-label="The run in 3D">
      <CaptionLine />
      <div className={styles.pane}>
        {drawing.attempt > 0 && (
          <Safely key={drawing.attempt} onFailed={() => turn(false)}>
            <Picture
              hands={hands}
              onSized={fitting.sized}
              onLost={() => turn(false)}
              onRestored={() => turn(true)}
              onFitKey={fitting.all}
              isForPaper={isForPaper}
              hasCard={drawing.graphics === 'card'}
            />
          </Safely>
        )}
        {!drawing.isOn && <Off onTryAgain={tryAgain} />}
      </div>
      <Bar onFit={fitting.all} onFitChosen={fitting.chosen} />
    </section>
  )
}

function firstAttempt(): Drawing {
  const graphics = graphicsHere()
  const isOn = graphics !== 'none'
  return { isOn, graphics, attempt: isOn ? 1 : 0 }
}

function Off({ onTryAgain }: { readonly onTryAgain: () => void }) {
  return (
    <div className={styles.off} role="status">
      <p>
        <strong>3D is off.</strong> The browser gives no graphics for it just now. The wall, the cut list and the sheets
        work without it.
      </p>
      <button type="button" className={styles.tool} onClick={onTryAgain}>
        Try again
      </button>
    </div>
  )
}

export default Scene
