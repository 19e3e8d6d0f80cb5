import { type BuildMethod, type LengthDisplay, type RuleSet, withOwn } from '../../engine/index'
import styles from './Panels.module.css'
import { RuleRows } from './RuleRows'
import { RULES } from './rules'

interface MethodRulesProps {
  readonly method: BuildMethod
  readonly display: LengthDisplay
  readonly onChange: (change: Partial<Omit<BuildMethod, 'id'>>) => void
}

/** The measures of a build method, which hold for all its cabinets that have none of their own. */
export function MethodRules({ method, display, onChange }: MethodRulesProps) {
  return (
    <>
      {(Object.keys(RULES) as RuleSet[]).map((set) => (
        <fieldset key={set} className={styles.set}>
          <legend>{RULES[set].title}</legend>
          <RuleRows
            set={set}
            methods={[method]}
            own={[]}
            display={display}
            onRules={(change) => onChange({ [set]: withOwn(method, change)[set] })}
          />
        </fieldset>
      ))}
    </>
  )
}
