import { Color } from 'three'

/** The colours of the shop drawing, read off the page so that light, dark and print are decided in one place. */
export interface Palette {
  /** In the order of `TONE`. */
  readonly tones: readonly Color[]
  readonly ink: Color
  /** Of what one sees in a hole. */
  readonly deep: Color
  readonly faint: Color
  readonly chalk: Color
  readonly wall: Color
}

export function paletteOf(element: HTMLElement): Palette {
  const probe = document.createElement('span')
  probe.style.cssText = 'display:none;transition:none'
  element.append(probe)
  const read = (name: string, fallback: string): Color => {
    probe.style.color = `var(${name}, ${fallback})`
    return colourOf(getComputedStyle(probe).color)
  }
  const birch = read('--birch', '#ecd7ae')
  const middle = read('--birch-2', '#dcbf8b')
  const dark = read('--birch-3', '#b8935a')
  const front = read('--front', '#f3ead6')
  const ink = read('--ink', '#23261f')
  const palette: Palette = {
    tones: [
      birch,
      middle.clone().lerp(dark, 0.55),
      middle.clone().lerp(dark, 0.3),
      front,
      front.clone().lerp(dark, 0.35),
      birch.clone().lerp(middle, 0.5),
      dark.clone().multiplyScalar(0.62),
      read('--appliance', '#b9bab3'),
    ],
    ink,
    deep: dark.clone().multiplyScalar(0.4),
    faint: read('--ink-3', '#8d9083'),
    chalk: read('--chalk', '#1f62a6'),
    wall: read('--sheet', '#fffdf7'),
  }
  probe.remove()
  return palette
}

/** Calls back whenever the page may have changed its colours; returns how to stop listening. */
export function watchTheme(changed: () => void): () => void {
  const dark = window.matchMedia('(prefers-color-scheme: dark)')
  const observer = new MutationObserver(changed)
  for (const element of [document.documentElement, document.body]) {
    observer.observe(element, { attributes: true, attributeFilter: ['data-theme', 'class', 'style'] })
  }
  dark.addEventListener('change', changed)
  return () => {
    observer.disconnect()
    dark.removeEventListener('change', changed)
  }
}

/**
 * A computed colour as it is on screen, with no conversion to linear light: the shaders put out what the page says.
 * Browsers write `rgb(236, 215, 174)`, or `color(srgb 0.92 0.84 0.68)` for mixed colours.
 */
export function colourOf(computed: string): Color {
  const [red = 0, green = 0, blue = 0] = (computed.replace(/^color\(\S+/, '').match(/[\d.]+/g) ?? []).map(Number)
  const whole = computed.startsWith('color(') ? 1 : 255
  const colour = new Color()
  colour.r = red / whole
  colour.g = green / whole
  colour.b = blue / whole
  return colour
}
