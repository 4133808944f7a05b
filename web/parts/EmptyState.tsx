import type { ReactNode } from 'react';

/** An empty place that teaches: what belongs here, how to begin, one thing to do now, perhaps a drawing. */
export function EmptyState(props: {
  title: string;
  steps: readonly ReactNode[];
  action?: ReactNode;
  drawing?: ReactNode;
}) {
  return (
    <section className="empty">
      <div className="stack">
        <h2>{props.title}</h2>
        <ol className="empty-steps">
          {props.steps.map((step, index) => (
            <li key={index}>{step}</li>
          ))}
        </ol>
        {props.action && <div>{props.action}</div>}
      </div>
      {props.drawing && <div aria-hidden="true">{props.drawing}</div>}
    </section>
  );
}
