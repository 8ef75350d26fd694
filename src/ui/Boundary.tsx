import { Component, type ReactNode } from 'react';

interface BoundaryProps {
  readonly children: ReactNode;
  /** Stands in for what could not be drawn. */
  readonly instead: ReactNode;
}

/** Keeps the rest of the page standing when a part of it breaks. React offers this to classes only. */
export class Boundary extends Component<BoundaryProps, { readonly broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override render() {
    return this.state.broken ? this.props.instead : this.props.children;
  }
}
