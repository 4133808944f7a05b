import { memo } from 'react';
import { paint } from './paint.ts';
import { phaseFill, seasonBandFill } from './SeasonPatterns.tsx';
import { rowParts, type SeasonFrame, type SeasonRowScene, type SeasonWeek, shareY } from './SeasonScene.ts';

/**
 * One lifter's season: above, the phases; below, what a week's lifts hold at lockout on average, the bar solid, the bands hatched upon it, with a tick
 * for the heaviest. One path for each sort of thing: forty such rows are drawn at once.
 */
export const SeasonRow = memo(function SeasonRow(props: { row: SeasonRowScene; frame: SeasonFrame }) {
  const { row, frame } = props;
  const { weeks, meetsAt } = row;
  const { weekPx, rowPx, todayAt } = frame;
  const { strip, load } = rowParts(rowPx);
  const y = (share: number) => shareY(share, rowPx);
  const x = (week: number) => Math.round(week * weekPx * 10) / 10;
  /** Draws something for each week that `d` says something of. */
  const each = (d: (week: SeasonWeek, at: number) => string) => weeks.map(d).join('');
  const patterns = [...new Set(weeks.flatMap(({ pattern }) => (pattern === null ? [] : [pattern])))];
  const stripOf = (pattern: number) =>
    runs(weeks, (week) => week.pattern === pattern)
      .map(([from, to]) => box(x(from), strip.top, x(to), strip.floor))
      .join('');
  const middle = (at: number) => x(at + 0.5);
  const half = Math.min(5, weekPx / 3, rowPx / 8);
  const loadMiddle = (load.top + load.floor) / 2;
  return (
    <svg width={x(frame.weeks)} height={rowPx} viewBox={`0 0 ${x(frame.weeks)} ${rowPx}`} aria-hidden="true">
      {patterns.map((pattern) => (
        <path key={pattern} d={stripOf(pattern)} fill={phaseFill(pattern)} stroke={paint.ironLine} />
      ))}
      <path
        d={each(({ barShare }, at) =>
          barShare === null ? '' : box(x(at), y(barShare), x(at + 1), load.floor),
        )}
        fill={paint.iron}
      />
      <path
        d={each(({ barShare, bandShare }, at) =>
          barShare === null || !bandShare ? '' : box(x(at), y(barShare + bandShare), x(at + 1), y(barShare)),
        )}
        fill={seasonBandFill}
      />
      <path d={outline(weeks, x, y)} stroke={paint.ink} strokeWidth="1.5" fill="none" />
      <path
        d={each(({ peakShare }, at) =>
          peakShare === null ? '' : `M${middle(at) - half} ${y(peakShare)}h${2 * half}`,
        )}
        stroke={paint.ink}
        strokeWidth="1.5"
      />
      <path
        d={each(({ isNewWave, isNewPhase }, at) =>
          isNewPhase
            ? `M${x(at)} ${strip.top}V${load.floor}`
            : isNewWave
              ? `M${x(at)} ${strip.top}V${strip.floor}`
              : '',
        )}
        stroke={paint.ink}
      />
      <path d={`M0 ${load.floor}H${x(weeks.length)}`} stroke={paint.ruleStrong} />
      <path
        d={each(({ away }, at) =>
          away === null ? '' : cross(middle(at), loadMiddle, away === 'all' ? half : half / 2),
        )}
        stroke={paint.paper}
        strokeWidth="5"
      />
      <path
        d={each(({ away }, at) =>
          away === null ? '' : cross(middle(at), loadMiddle, away === 'all' ? half : half / 2),
        )}
        stroke={paint.ink}
        strokeWidth="1.75"
      />
      <path
        d={runs(weeks, ({ isRestricted }) => isRestricted)
          .map(([from, to]) => `M${x(from) + 1} ${load.floor - half}v${half}H${x(to) - 1}v${-half}`)
          .join('')}
        stroke={paint.stop}
        strokeWidth="2.5"
        fill="none"
      />
      <path
        d={each(({ isByHand }, at) =>
          isByHand ? diamond(middle(at), (strip.top + strip.floor) / 2, half) : '',
        )}
        fill={paint.ink}
        stroke={paint.paper}
      />
      <path d={meetsAt.map((at) => `M${x(at)} 0V${rowPx}`).join('')} stroke={paint.ink} strokeWidth="3" />
      {todayAt !== null && (
        <path d={`M${x(todayAt)} 0V${rowPx}`} stroke={paint.go} strokeWidth="2" strokeDasharray="4 3" />
      )}
    </svg>
  );
});

function box(left: number, top: number, right: number, floor: number): string {
  return `M${left} ${top}H${right}V${floor}H${left}Z`;
}

function cross(x: number, y: number, reach: number): string {
  return `M${x - reach} ${y - reach}l${2 * reach} ${2 * reach}m0 ${-2 * reach}l${-2 * reach} ${2 * reach}`;
}

function diamond(x: number, y: number, reach: number): string {
  return `M${x} ${y - reach}l${reach} ${reach}l${-reach} ${reach}l${-reach} ${-reach}z`;
}

/** The average at lockout as steps; a week without lifts leaves a gap. */
function outline(
  weeks: readonly SeasonWeek[],
  x: (week: number) => number,
  y: (share: number) => number,
): string {
  return weeks
    .map(({ barShare, bandShare }, at) => {
      if (barShare === null) return '';
      const top = y(barShare + (bandShare ?? 0));
      const goesOn = at > 0 && weeks[at - 1]!.barShare !== null;
      return `${goesOn ? 'L' : 'M'}${x(at)} ${top}H${x(at + 1)}`;
    })
    .join('');
}

/** The stretches of weeks of which something holds, each as its first week and the one after its last. */
function runs(
  weeks: readonly SeasonWeek[],
  holds: (week: SeasonWeek) => boolean,
): (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (const [at, week] of weeks.entries()) {
    if (!holds(week)) continue;
    const last = found.at(-1);
    // A phase that follows itself in the next round is another one.
    if (last && last[1] === at && !week.isNewPhase) last[1] = at + 1;
    else found.push([at, at + 1]);
  }
  return found;
}
