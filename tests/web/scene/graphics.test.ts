import { describe, expect, it } from 'vitest'
import { graphicsNamed } from '../../../web/scene/graphics'

describe('who draws the picture', () => {
  it.each([
    'ANGLE (Google, Vulkan 1.3.0 (SwiftShader Device (Subzero) (0x0000C0DE)), SwiftShader driver)',
    'llvmpipe (LLVM 15.0.6, 256 bits)',
    'Mesa softpipe',
    'ANGLE (Microsoft, Microsoft Basic Render Driver Direct3D11 vs_5_0 ps_5_0)',
    'Generic Software Renderer',
  ])('is the processor by %s', (driver) => {
    expect(graphicsNamed(driver)).toBe('processor')
  })

  it.each(['ANGLE (Mesa Intel(R) UHD Graphics, OpenGL 4.6)', 'Adreno (TM) 640', 'WebKit WebGL', ''])(
    'is a card by %s',
    (driver) => {
      expect(graphicsNamed(driver)).toBe('card')
    },
  )
})
