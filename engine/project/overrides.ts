import { pocketsOf } from './fixing'
import type { BuildMethod, MethodChoices } from './method'

/** The measures of a build method by what they are of. */
export const RULE_SETS = ['fronts', 'banding', 'shelves', 'drawers', 'hinge', 'slides', 'legs', 'pockets'] as const

export type RuleSet = (typeof RULE_SETS)[number]
export type RulesOf<Set extends RuleSet> = NonNullable<BuildMethod[Set]>

type Optional<Rules> = { [Name in keyof Rules]-?: undefined extends Rules[Name] ? Name : never }[keyof Rules]

/** Some measures of a set; null for what a method has and the cabinet has not. */
export type OwnRules<Set extends RuleSet> = {
  readonly [Name in keyof RulesOf<Set>]?:
    | RulesOf<Set>[Name]
    | (Name extends Optional<RulesOf<Set>> ? null : never)
    | undefined
}

/** What a cabinet settles otherwise than its method: whole choices, and single measures of its rules. */
export type Overrides = Partial<MethodChoices> & { readonly [Set in RuleSet]?: OwnRules<Set> | undefined }

/** A method with what a cabinet settles itself; the very same where that is nothing. */
export function withOwn(method: BuildMethod, own: Overrides): BuildMethod {
  if (Object.keys(own).length === 0) return method
  const sets = RULE_SETS.flatMap((set) => {
    const rules = own[set]
    if (!rules) return []
    const usual = set === 'pockets' ? pocketsOf(method) : method[set]
    return [[set, withoutEmpty({ ...usual, ...rules })] as const]
  })
  return { ...method, ...own, ...Object.fromEntries(sets) } as BuildMethod
}

/** What is own after a change of it: what is undefined goes back to the method, the others are merged into it. */
export function overridden(own: Overrides, change: Overrides): Overrides {
  const sets = RULE_SETS.flatMap((set) => {
    if (!change[set]) return []
    const rules = withoutGone({ ...own[set], ...change[set] })
    return [[set, Object.keys(rules).length > 0 ? rules : undefined] as const]
  })
  return withoutGone({ ...own, ...change, ...Object.fromEntries(sets) })
}

/** The names of what is own, a measure with its set: `back`, `shelves.setback`. */
export function ownNames(own: Overrides): string[] {
  return Object.entries(own).flatMap(([name, value]) => {
    if (!isRuleSet(name)) return value === undefined ? [] : [name]
    return Object.keys(value as object).map((measure) => `${name}.${measure}`)
  })
}

function isRuleSet(name: string): name is RuleSet {
  return RULE_SETS.some((set) => set === name)
}

function withoutGone<Own extends object>(own: Own): Own {
  return Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined)) as Own
}

function withoutEmpty(rules: object): object {
  return Object.fromEntries(Object.entries(rules).filter(([, value]) => value !== null && value !== undefined))
}
