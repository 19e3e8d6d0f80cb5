/** Who draws the picture: a graphics card, the processor in place of one, or nobody. */
export type Graphics = 'card' | 'processor' | 'none'

/** What drivers without a card call themselves. */
const WITHOUT_CARD = /swiftshader|llvmpipe|softpipe|software|basic render/i

/** Asks the browser who will draw. The context asked for is handed straight back. */
export function graphicsHere(): Graphics {
  try {
    const context = document.createElement('canvas').getContext('webgl2')
    if (!context) return 'none'
    const hasName = context.getExtension('WEBGL_debug_renderer_info')
    const graphics = graphicsNamed(String(context.getParameter(hasName?.UNMASKED_RENDERER_WEBGL ?? context.RENDERER)))
    context.getExtension('WEBGL_lose_context')?.loseContext()
    return graphics
  } catch {
    return 'none'
  }
}

/** A driver that does not say what it is, is taken for a card's. */
export function graphicsNamed(driver: string): Graphics {
  return WITHOUT_CARD.test(driver) ? 'processor' : 'card'
}
