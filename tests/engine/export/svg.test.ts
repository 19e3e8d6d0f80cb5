import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../../engine/drawings/drawing'
import { svgOf } from '../../../engine/export/svg'

const BOUNDS = { left: -100, bottom: -50, width: 2540, height: 1270 }

describe('a drawing as SVG', () => {
  it('measures true: a unit is a millimetre', () => {
    expect(svgOf({ bounds: BOUNDS, marks: [] })).toContain('width="2540mm" height="1270mm" viewBox="0 0 2540 1270"')
  })

  it('turns y up into y down', () => {
    const drawing: Drawing = {
      bounds: BOUNDS,
      marks: [{ kind: 'rect', layer: 'part', rect: { left: 10, bottom: 20, width: 300, height: 200 } }],
    }
    // x: 10 + 100; y: from the top of the drawing, -50 + 1270, down to 20 + 200
    expect(svgOf(drawing)).toContain('<rect x="110" y="1000" width="300" height="200"')
  })

  it('keeps whatever a name contains text', () => {
    const text = '</text><script>alert("1")</script>&\'\u0000'
    const svg = svgOf(
      {
        bounds: BOUNDS,
        marks: [{ kind: 'text', layer: 'text', at: { x: 0, y: 0 }, text, size: 40, isUpright: false }],
      },
      '<b>',
    )
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&amp;&#39;</text>')
    expect(svg).toContain('<title>&lt;b&gt;</title>')
    expect(svg).not.toContain('<script')
    expect(svg).not.toContain('\u0000')
  })

  it('draws a dimension as a line with a slash at each end and its figure', () => {
    const svg = svgOf({
      bounds: BOUNDS,
      marks: [
        {
          kind: 'dimension',
          layer: 'dimension',
          from: { x: 600, y: 0 },
          to: { x: 0, y: 0 },
          offset: 30,
          text: '600',
          size: 20,
        },
      ],
    })
    expect(svg.match(/<line/g)).toHaveLength(3)
    // Going left, the left hand points down: y is -30, which is 1220 + 30 below the top.
    expect(svg).toContain('<line x1="700" y1="1250" x2="100" y2="1250"')
    expect(svg).toContain('>600</text>')
  })
})
