import { methodOf } from '../project/builtBy'
import type { Project } from '../project/document'
import { find } from '../project/references'
import { settle } from '../units/length'
import { HANDLE_OUT, roomRemedy, type Standing } from './beside'
import { about, type Finding, GEOMETRY, PRACTICE, withRemedy } from './finding'
import { sayIn } from './say'
import { alongOwn } from './slantDoor'

/**
 * The folding door of an L that meets what stands out further beside the end that it hangs on. Opened square, its leaves lie
 * on each other with the pull between them:
 *
 *            |#|o|#|
 *            |#| |#|------+
 *      ------+#| |        |   the leaf that is pulled is beside the neighbour, or before it
 *       own leg|   | tall |
 */
export function foldDoorFindings(one: Standing, project: Project, standing: readonly Standing[]): Finding[] {
  const { corner, front, width, depth } = one.cabinet
  if (corner?.kind !== 'L' || front.kind === 'open') return []
  const leaf = find(project.materials, methodOf(one.cabinet, project).frontMaterial)?.thickness ?? 0
  const hung = settle(width - corner.otherDepth - one.frontThickness)
  const pulled = settle(corner.other - depth - one.frontThickness)
  const wanted = settle(HANDLE_OUT + leaf)
  return alongOwn(one.cabinet, corner, standing).flatMap(({ other, gap, side }) => {
    const proud = settle(other.cabinet.depth + other.frontThickness - depth - one.frontThickness)
    // Folded, the leaf that is pulled ends as far from the hinges as it is shorter than the other.
    if (gap >= wanted || proud <= Math.max(0, hung - pulled)) return []
    const say = sayIn(project.display)
    const [measure, limit] = say.apart(gap, wanted)
    const clears = proud <= hung - HANDLE_OUT
    const message =
      `its folding door, opened square, has both leaves and the pull between them beside ${other.mark}, which stands out ` +
      `${say.length(proud)} further there: ${limit} beside it are wanted, and there are ${measure}. ` +
      (clears
        ? `With its leaves left square to each other it passes before ${other.mark}.`
        : `Nor can it pass before ${other.mark} with its leaves square to each other.`)
    const source = `${GEOMETRY}; what pulls stand out: ${PRACTICE}`
    const finding = about(one, { weight: clears ? 'know' : 'mind', message, measure, limit, source })
    return [withRemedy(finding, () => roomRemedy(other, side, settle(wanted - gap), project))]
  })
}
