import { Color, DoubleSide, FrontSide, ShaderMaterial } from 'three'
import type { Palette } from './palette'

/** The inks and washes that everything in the scene is drawn with; shared by all cabinets, so a slider sets one number. */
export interface Shading {
  readonly boards: ShaderMaterial
  readonly lines: ShaderMaterial
  /** Draws what is lit once more through whatever stands before it. */
  readonly through: ShaderMaterial
  readonly holes: ShaderMaterial
  readonly wall: ShaderMaterial
  readonly wallLines: ShaderMaterial
  setApart(apart: number): void
  setPalette(palette: Palette): void
  dispose(): void
}

/**
 * `away` is how far a point goes fully apart and `stage` between which stands of the slider, then the same of its second
 * way; `lit` is how strongly chalk is laid on. `aside` is how far the stand of a point steps aside, ahead of the slider as
 * in `standAt`: what stands in a group of its own is moved by that, and has none.
 */
const PLACED = /* glsl */ `
  attribute vec3 aside;
  attribute vec3 away;
  attribute vec2 stage;
  attribute vec3 awayThen;
  attribute vec2 stageThen;
  attribute float lit;
  uniform float apart;
  uniform vec3 chalk;
  varying vec4 colour;
  float gone(vec2 between) {
    float share = between.y > between.x ? (apart - between.x) / (between.y - between.x) : 1.0;
    return clamp(share, 0.0, 1.0);
  }
  vec4 placedAt(vec3 point) {
    float left = 1.0 - apart;
    vec3 at = point + aside * (1.0 - left * left * left) + away * gone(stage) + awayThen * gone(stageThen);
    return projectionMatrix * modelViewMatrix * vec4(at, 1.0);
  }
  vec4 placed() { return placedAt(position); }
`

/** Light falls from above and a little from the left, the same however the run is turned, as on a drawing. */
const BOARD = /* glsl */ `
  ${PLACED}
  attribute float tone;
  uniform vec3 tones[8];
  void main() {
    float light = 0.92 + 0.08 * normal.y + 0.07 * normal.z - 0.05 * normal.x;
    colour = vec4(mix(tones[int(tone + 0.5)] * light, chalk, lit), 1.0);
    gl_Position = placed();
  }
`

const LINE = /* glsl */ `
  ${PLACED}
  uniform vec3 ink;
  void main() {
    colour = lit > 0.0 ? vec4(chalk, 1.0) : vec4(ink, 0.62);
    gl_Position = placed();
  }
`

/** Half discs round both ends of what is long: a round hole has its two ends in one place. */
const HOLE = /* glsl */ `
  ${PLACED}
  attribute vec3 centre;
  attribute vec3 opens;
  attribute vec3 along;
  attribute vec2 size;
  uniform vec3 deep;
  void main() {
    float x = position.x * size.x + sign(position.x) * size.y;
    vec3 point = centre + along * x + cross(opens, along) * (position.y * size.x) + opens * 0.1;
    colour = vec4(mix(deep, chalk, lit), 1.0);
    gl_Position = placedAt(point);
  }
`

/** Lines that are not lit are put outside the picture. */
const THROUGH = /* glsl */ `
  ${PLACED}
  void main() {
    colour = vec4(chalk, 0.4);
    gl_Position = lit > 0.0 ? placed() : vec4(2.0, 2.0, 2.0, 1.0);
  }
`

const PLAIN = /* glsl */ `
  uniform vec3 ink;
  uniform float strength;
  varying vec4 colour;
  void main() {
    colour = vec4(ink, strength);
    gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  }
`

const COLOURED = /* glsl */ `
  varying vec4 colour;
  void main() { gl_FragColor = colour; }
`

export function makeShading(): Shading {
  const apart = { value: 0 }
  const chalk = { value: new Color() }
  const ink = { value: new Color() }
  const deep = { value: new Color() }
  const tones = { value: Array.from({ length: 8 }, () => new Color()) }
  const wallColour = { value: new Color() }
  const faint = { value: new Color() }
  const boards = new ShaderMaterial({
    uniforms: { apart, chalk, tones },
    vertexShader: BOARD,
    fragmentShader: COLOURED,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  })
  const clear = { fragmentShader: COLOURED, transparent: true, depthWrite: false }
  const lines = new ShaderMaterial({ uniforms: { apart, chalk, ink }, vertexShader: LINE, ...clear })
  const holes = new ShaderMaterial({
    uniforms: { apart, chalk, deep },
    vertexShader: HOLE,
    fragmentShader: COLOURED,
    side: DoubleSide,
  })
  const through = new ShaderMaterial({ uniforms: { apart, chalk }, vertexShader: THROUGH, ...clear, depthTest: false })
  const wall = new ShaderMaterial({
    uniforms: { ink: wallColour, strength: { value: 0.7 } },
    vertexShader: PLAIN,
    ...clear,
    side: FrontSide,
  })
  const wallLines = new ShaderMaterial({
    uniforms: { ink: faint, strength: { value: 0.8 } },
    vertexShader: PLAIN,
    ...clear,
  })
  for (const material of [boards, lines, holes, through])
    Object.assign(material.defaultAttributeValues, { aside: [0, 0, 0] })
  return {
    boards,
    lines,
    through,
    holes,
    wall,
    wallLines,
    setApart(value) {
      apart.value = value
    },
    setPalette(palette) {
      chalk.value.copy(palette.chalk)
      ink.value.copy(palette.ink)
      deep.value.copy(palette.deep)
      wallColour.value.copy(palette.wall)
      faint.value.copy(palette.faint)
      for (const [at, tone] of tones.value.entries()) tone.copy(palette.tones[at]!)
    },
    dispose() {
      for (const material of [boards, lines, through, holes, wall, wallLines]) material.dispose()
    },
  }
}
