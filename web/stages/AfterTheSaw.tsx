import { useMemo } from 'react'
import {
  type AssemblyStep,
  assemblyOfCabinet,
  assemblyOfRun,
  type BuiltRun,
  type DerivedCabinet,
} from '../../engine/index'
import { useStore } from '../store/store'
import styles from './Stages.module.css'

/** From the saw to the wall: what is done to the boards of a cabinet, one thing after another. */
export function AfterTheSaw({ built }: { readonly built: DerivedCabinet }) {
  const project = useStore((state) => state.derived.project)
  const steps = useMemo(() => assemblyOfCabinet(built, project), [built, project])
  return <Steps mark={built.mark} steps={steps} />
}

/** The same of the boards over several cabinets. */
export function AfterTheSawOfRun({ run }: { readonly run: BuiltRun }) {
  const project = useStore((state) => state.derived.project)
  const steps = useMemo(() => assemblyOfRun(run, project), [run, project])
  return <Steps mark={run.mark} steps={steps} />
}

function Steps({ mark, steps }: { readonly mark: string; readonly steps: readonly AssemblyStep[] }) {
  return (
    <ol className={styles.assembly} aria-label={`After the saw: ${mark}`}>
      {steps.map((step, at) => (
        <li key={at} data-stage={step.stage}>
          {step.text} {step.marks.length > 0 && <strong>{marksOf(step, mark)}</strong>}
        </li>
      ))}
    </ol>
  )
}

/** Under the heading of its cabinet a mark is said without it. */
function marksOf({ marks }: AssemblyStep, cabinet: string): string {
  return marks.map((mark) => (mark.startsWith(`${cabinet}-`) ? mark.slice(cabinet.length + 1) : mark)).join(' ')
}
