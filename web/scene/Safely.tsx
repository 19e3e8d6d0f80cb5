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
