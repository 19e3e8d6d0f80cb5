import { Component, type ReactNode } from 'react'

/** Catches what the graphics throw, so that a picture that cannot be drawn takes nothing else with it. */
export class Safely extends Component<
  { readonly children: ReactNode; readonly onFailed: () => void },
  { readonly hasFailed: boolean }
> {
  override state = { hasFailed: false }

  static getDerivedStateFromError() {
    return { hasFailed: true }
  }

  override componentDidCatch() {
    this.props.onFailed()
  }

  override render() {
    return this.state.hasFailed ? null : this.props.children
  }
}

/** Whether the browser will give us a picture at all. The context asked for is handed straight back. */
export function canDraw(): boolean {
  try {
    const context = document.createElement('canvas').getContext('webgl2')
    context?.getExtension('WEBGL_lose_context')?.loseContext()
    return context !== null
  } catch {
    return false
  }
}
