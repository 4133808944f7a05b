import { Link } from 'wouter';
import { SeasonLegend } from '#web/charts/SeasonLegend.tsx';
import { SeasonPatterns } from '#web/charts/SeasonPatterns.tsx';
import { SeasonRow } from '#web/charts/SeasonRow.tsx';
import type { SeasonFrame, SeasonRowScene } from '#web/charts/SeasonScene.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';

/** No season is planned yet: what one is, and how to begin. */
export function SeasonStart() {
  return (
    <div className="stack loose">
      <h1>Season</h1>
      <EmptyState
        title="No season is planned yet"
        steps={[
          'A season begins at its end: give the meet and its day. Phases are laid backwards from there.',
          'Choose a method. Four come with the program: with bands equipped or raw, without bands, and for the first year. You can change each of them afterwards.',
          'Tick who takes part. Everybody has the same weeks until one goes to another meet, is away, or you set something by hand.',
          'Take a week: its days then stand on the Day screen with groups and lifters, ready to be worked out.',
        ]}
        action={
          <Link href="/new" className="button strong">
            Plan a season
          </Link>
        }
        drawing={
          <div className="stack">
            <SeasonPatterns />
            <MeasuredWidth>
              {(widthPx) => <SeasonRow row={example} frame={frameFor(widthPx)} />}
            </MeasuredWidth>
            <SeasonLegend
              phases={[
                { pattern: 1, title: 'waves: the bar goes back, the bands step up' },
                { pattern: 3, title: 'near the limit' },
                { pattern: 4, title: 'deload' },
              ]}
            />
          </div>
        }
      />
      <p>
        <Link href="/methods">Methods</Link>: read what each asks for before you choose.{' '}
        <Link href="~/comparison">Two ways compared</Link>: plan it before anybody starts.
      </p>
    </div>
  );
}

function frameFor(widthPx: number): SeasonFrame {
  const weeks = example.weeks.length;
  return { weekPx: Math.min(56, Math.floor(widthPx / weeks)), weeks, rowPx: 120, todayAt: 0.5 };
}

/** Invented: two waves, the heavy weeks, the deload and the meet. Phase, week of the phase and of the wave, shares on the bar and in bands. */
const example: SeasonRowScene = {
  key: 'example',
  name: '',
  meetsAt: [10.8],
  weeks: (
    [
      [1, 0, 0, 0.5, 0.2],
      [1, 1, 1, 0.525, 0.2],
      [1, 2, 2, 0.55, 0.2],
      [1, 3, 0, 0.5, 0.27],
      [1, 4, 1, 0.525, 0.27],
      [1, 5, 2, 0.55, 0.27],
      [3, 0, 0, 0.6, 0.3],
      [3, 1, 1, 0.62, 0.3],
      [3, 2, 2, 0.65, 0.3],
      [4, 0, 0, 0.5, 0.1],
      [4, 1, 1, 0.45, 0],
    ] as const
  ).map(([pattern, weekOfPhase, weekOfWave, barShare, bandShare]) => ({
    pattern,
    isNewPhase: weekOfPhase === 0,
    isNewWave: weekOfWave === 0,
    barShare,
    bandShare,
    peakShare: null,
    away: null,
    isRestricted: false,
    isByHand: false,
  })),
};
