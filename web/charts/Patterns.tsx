import { paint } from './paint.ts';

/** Names of the fills of one drawing; `id` keeps two drawings on a page apart. */
export function patternFill(id: string, pattern: 'band' | 'bandUp' | 'chain'): string {
  return `url(#${id}-${pattern})`;
}

/** Hatched is band, hatched the other way a band that lifts, dotted is chain: readable in black and white. */
export function Patterns({ id }: { id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}-band`}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="7" height="7" fill={paint.rubberSoft} fillOpacity="0.55" />
        <path d="M0 0v7" stroke={paint.rubber} strokeWidth="2.6" />
      </pattern>
      <pattern
        id={`${id}-bandUp`}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(-45)"
      >
        <path d="M0 0v7" stroke={paint.rubber} strokeWidth="1.4" />
      </pattern>
      <pattern id={`${id}-chain`} width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" fill={paint.paper} />
        <circle cx="2" cy="2" r="1.5" fill={paint.ironLine} />
        <circle cx="6" cy="6" r="1.5" fill={paint.ironLine} />
      </pattern>
    </defs>
  );
}
