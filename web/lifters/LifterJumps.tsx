import { type LifterView, lifterSections } from './lifterSections.tsx';

/** Straight to what one came for: the page is long, and six lifters wait. */
export function LifterJumps({ view }: { view: LifterView }) {
  return (
    <nav className="lifters-jumps screen-only" aria-label="On this page">
      {lifterSections
        .filter(({ isShown }) => isShown === undefined || isShown(view))
        .map(({ id, word }) => (
          <a key={id} href={`#${id}`}>
            {word}
          </a>
        ))}
    </nav>
  );
}
