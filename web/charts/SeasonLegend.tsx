import { percent } from '#contract/words/percent.ts';
import { PhaseSwatch } from './PhaseSwatch.tsx';
import { paint } from './paint.ts';
import { seasonBandFill } from './SeasonPatterns.tsx';
import { LEAST_SHARE } from './SeasonScene.ts';

/** What the patterns and marks of the season's picture mean; `phases` in the order of the method. */
export function SeasonLegend({ phases }: { phases: readonly { pattern: number; title: string }[] }) {
  return (
    <div className="chart-legend small">
      {phases.map(({ pattern, title }) => (
        <span key={pattern}>
          <PhaseSwatch pattern={pattern} />
          {title}
        </span>
      ))}
      <span>
        <svg width="28" height="24" aria-hidden="true">
          <path d="M0 24V10H28V24Z" fill={paint.iron} />
          <path d="M0 10V4H28V10Z" fill={seasonBandFill} />
          <path d="M0 4H28" stroke={paint.ink} strokeWidth="1.5" />
          <path d="M9 1h10" stroke={paint.ink} strokeWidth="1.5" />
        </svg>
        at lockout, the lifts of a week on average, from {percent(LEAST_SHARE)} of the maximum up: bar, bands
        upon it; the tick is the heaviest
      </span>
      {marks.map(({ word, mark }) => (
        <span key={word}>
          <svg width="16" height="18" aria-hidden="true">
            {mark}
          </svg>
          {word}
        </span>
      ))}
    </div>
  );
}

const marks = [
  { word: 'meet', mark: <path d="M8 0V18" stroke={paint.ink} strokeWidth="3" /> },
  {
    word: 'today',
    mark: <path d="M8 0V18" stroke={paint.go} strokeWidth="2" strokeDasharray="4 3" />,
  },
  {
    word: 'no training: away or closed; small, on some days',
    mark: <path d="M3 4l10 10m0 -10l-10 10" stroke={paint.ink} strokeWidth="1.75" />,
  },
  {
    word: 'restricted',
    mark: <path d="M1 8v6H15v-6" stroke={paint.stop} strokeWidth="2.5" fill="none" />,
  },
  { word: 'set by hand', mark: <path d="M8 3l5 6l-5 6l-5 -6z" fill={paint.ink} /> },
] as const;
