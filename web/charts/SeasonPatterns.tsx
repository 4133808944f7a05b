import { paint } from './paint.ts';

/** So many phases are told apart; a method with more begins again. */
const phasePatterns = 8;

/** The fill of the phase with that place in its method, for every drawing of a page that holds `SeasonPatterns`. */
export function phaseFill(pattern: number): string {
  return `url(#season-phase-${pattern % phasePatterns})`;
}

export const seasonBandFill = 'url(#season-band)';

/**
 * The patterns of the phases and of bands, once for all rows of a page. Each phase differs from its neighbours in direction and in how dense it is, so that
 * black and white loses nothing.
 */
export function SeasonPatterns() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="season-patterns">
      <defs>
        {drawn.map(({ tone, path, width, size }, pattern) => (
          <pattern
            key={pattern}
            id={`season-phase-${pattern}`}
            width={size}
            height={size}
            patternUnits="userSpaceOnUse"
          >
            <rect width={size} height={size} fill={paint.iron} fillOpacity={tone} />
            <path d={path} stroke={paint.ink} strokeWidth={width} strokeLinecap="square" fill="none" />
          </pattern>
        ))}
        <pattern
          id="season-band"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="5" height="5" fill={paint.rubberSoft} fillOpacity="0.55" />
          <path d="M0 0v5" stroke={paint.rubber} strokeWidth="2.2" />
        </pattern>
      </defs>
    </svg>
  );
}

const drawn = [
  { tone: 0, size: 8, width: 1.6, path: 'M2 3h0.01M6 7h0.01' },
  { tone: 0.35, size: 7, width: 1, path: 'M-1 1L1 -1M0 7L7 0M6 8L8 6' },
  { tone: 0.6, size: 6, width: 1.2, path: 'M3 0v6' },
  { tone: 0.9, size: 6, width: 1.2, path: 'M0 0L6 6M6 0L0 6' },
  { tone: 0, size: 6, width: 1.1, path: 'M0 3h6' },
  { tone: 0.5, size: 7, width: 1.2, path: 'M0 0L7 7M-1 6L1 8M6 -1L8 1' },
  { tone: 0.7, size: 4, width: 1.4, path: 'M1 1h0.01M3 3h0.01' },
  { tone: 0.2, size: 8, width: 1, path: 'M0 4h8M4 0v8' },
] as const;
