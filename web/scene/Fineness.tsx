import { type RootState, useFrame, useThree } from '@react-three/fiber'
import { useEffect, useMemo, useRef } from 'react'
import { NoBlending, ShaderMaterial, Vector2, WebGLRenderTarget } from 'three'
import { FullScreenQuad } from 'three/addons/postprocessing/Pass.js'

/** Frames that come closer than this are one motion, and so long after the last of them it is over. */
const MOTION_MS = 150
/** Points of a pixel that are looked at where edges are to be smooth, as a card does by itself. */
const POINTS = 4

/**
 * Without a card the processor works out every point: what moves is drawn with jagged edges, at half the work, and once
 * more with smooth ones when it stands. The canvas says which.
 */
export function Fineness() {
  const invalidate = useThree((state) => state.invalidate)
  const smooth = useMemo(smoothly, [])
  const drawn = useRef(Number.NEGATIVE_INFINITY)
  const isFinishing = useRef(false)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  useEffect(
    () => () => {
      clearTimeout(timer.current)
      smooth.dispose()
    },
    [smooth],
  )

  function finish() {
    isFinishing.current = true
    invalidate()
  }

  // With an order of its own a frame is drawn by whoever asked for it.
  useFrame((state) => {
    const now = performance.now()
    const isFine = isFinishing.current || now - drawn.current >= MOTION_MS
    state.gl.domElement.dataset.edges = isFine ? 'smooth' : 'jagged'
    if (isFine) {
      smooth.draw(state)
    } else {
      state.gl.render(state.scene, state.camera)
      clearTimeout(timer.current)
      timer.current = setTimeout(finish, MOTION_MS)
    }
    if (!isFinishing.current) drawn.current = now
    isFinishing.current = false
  }, 1)
  return null
}

/** Draws a scene aside with several points a pixel, and lays it on the canvas. */
function smoothly() {
  const aside = new WebGLRenderTarget(1, 1, { samples: POINTS })
  const onto = new FullScreenQuad(
    new ShaderMaterial({
      uniforms: { picture: { value: aside.texture } },
      vertexShader: 'varying vec2 at; void main() { at = uv; gl_Position = vec4(position.xy, 0.0, 1.0); }',
      fragmentShader:
        'uniform sampler2D picture; varying vec2 at; void main() { gl_FragColor = texture2D(picture, at); }',
      blending: NoBlending,
      depthTest: false,
      depthWrite: false,
    }),
  )
  const size = new Vector2()
  return {
    draw({ gl, scene, camera }: RootState) {
      gl.getDrawingBufferSize(size)
      aside.setSize(size.x, size.y)
      gl.setRenderTarget(aside)
      gl.render(scene, camera)
      gl.setRenderTarget(null)
      onto.render(gl)
    },
    dispose() {
      aside.dispose()
      onto.material.dispose()
      onto.dispose()
    },
  }
}
