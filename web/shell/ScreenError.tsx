import { QueryErrorResetBoundary } from '@tanstack/react-query';
import { Component, type ReactNode } from 'react';

/** Catches what a screen could not do, says it in one sentence and offers another try. */
export function ScreenError({ children }: { children: ReactNode }) {
  return (
    <QueryErrorResetBoundary>
      {({ reset }) => <Boundary onAgain={reset}>{children}</Boundary>}
    </QueryErrorResetBoundary>
  );
}

interface BoundaryProps {
  onAgain: () => void;
  children: ReactNode;
}

class Boundary extends Component<BoundaryProps, { error: Error | null }> {
  override state: { error: Error | null } = { error: null };

  static getDerivedStateFromError(error: Error) {
    return { error };
  }

  override render() {
    const { error } = this.state;
    if (error === null) return this.props.children;
    return (
      <section className="stack trouble" role="alert">
        <h1>This page cannot be shown</h1>
        <p>{error.message}</p>
        <div>
          <button
            type="button"
            onClick={() => {
              this.props.onAgain();
              this.setState({ error: null });
            }}
          >
            Try again
          </button>
        </div>
      </section>
    );
  }
}
