import { useStore } from '../store/store'
import { useFollowing } from '../store/turns'
import { captionOf } from './caption'
import styles from './Scene.module.css'

/** The mark and measure of what is selected, over the picture. */
export function CaptionLine() {
  const derived = useFollowing('scene', (state) => state.derived)
  const selection = useFollowing('scene', (state) => state.selection)
  const { mark, words } = captionOf(derived, selection)
  return (
    <p className={styles.caption}>
      {mark && <strong>{mark}</strong>} {words}
    </p>
  )
}

/** Under the picture: how far apart, with or without fronts, and back to the whole. */
export function Bar({ onFit, onFitChosen }: { readonly onFit: () => void; readonly onFitChosen: () => void }) {
  const explode = useStore((state) => state.explode)
  const areFrontsHidden = useStore((state) => state.areFrontsHidden)
  const hasChosen = useStore((state) => state.selection.kind !== 'nothing')
  const actions = useStore((state) => state.actions)
  const percent = Math.round(explode * 100)
  return (
    <div className={styles.bar}>
      <label className={styles.apart}>
        <span>closed</span>
        <input
          type="range"
          min={0}
          max={100}
          step={1}
          value={percent}
          aria-label="Take apart"
          aria-valuetext={percent === 0 ? 'closed' : percent === 100 ? 'fully exploded' : `${percent} % exploded`}
          onChange={(event) => actions.setExplode(Number(event.currentTarget.value) / 100)}
        />
        <span>exploded</span>
      </label>
      <button
        type="button"
        aria-pressed={areFrontsHidden}
        className={styles.tool}
        onClick={() => actions.hideFronts(!areFrontsHidden)}
      >
        Hide fronts
      </button>
      <button type="button" className={styles.tool} disabled={!hasChosen} onClick={onFitChosen}>
        Fit selected
      </button>
      <button type="button" className={styles.tool} onClick={onFit}>
        Fit all
      </button>
    </div>
  )
}
