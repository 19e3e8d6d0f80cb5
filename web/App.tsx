import styles from './App.module.css'
import { BenchView } from './sheets/BenchView'
import { BuildStage } from './stages/BuildStage'
import { Consequences } from './stages/Consequences'
import { CutStage } from './stages/CutStage'
import { DesignStage } from './stages/DesignStage'
import { Header } from './stages/Header'
import { Notice } from './stages/Notice'
import { ShowStage } from './stages/ShowStage'
import { SiteStage } from './stages/SiteStage'
import type { StageName } from './store/state'
import { useStore } from './store/store'
import { PageFoot } from './ui/PageFoot'

export function App() {
  const stage = useStore((state) => state.stage)
  const unit = useStore((state) => state.shown.display.unit)
  const id = useStore((state) => state.history.present.id)
  return (
    <div className={styles.app} data-unit={unit}>
      <Header />
      {stage !== 'show' && <PaperHead />}
      {/* What the work costs the shop is not for the client's eyes. */}
      {stage !== 'show' && <Consequences />}
      <Notice />
      <main className={styles.main} key={id}>
        <StageOf stage={stage} />
      </main>
      <BenchView />
    </div>
  )
}

/** At the head of what is printed. */
function PaperHead() {
  const { name, display } = useStore((state) => state.shown)
  return (
    <p className={styles.paperHead}>
      <PageFoot words={name} />
      <strong>{name}</strong> <span>{display.unit === 'mm' ? 'Lengths in millimetres' : 'Lengths in inches'}</span>
    </p>
  )
}

function StageOf({ stage }: { readonly stage: StageName }) {
  switch (stage) {
    case 'site':
      return <SiteStage />
    case 'design':
      return <DesignStage />
    case 'show':
      return <ShowStage />
    case 'cut':
      return <CutStage />
    case 'build':
      return <BuildStage />
  }
}
