import { MarkShape } from './MarkShape.tsx';
import { paint } from './paint.ts';

/** What the marks, the line and its bands mean in the picture of strength over time. */
export function TimeLegend() {
  return (
    <p className="chart-legend small quiet">
      <span>
        <svg width="26" height="16" aria-hidden="true">
          <rect width="26" height="16" fill={paint.ink} fillOpacity="0.1" />
          <rect y="4" width="26" height="8" fill={paint.ink} fillOpacity="0.16" />
          <path d="M0 8h26" stroke={paint.ink} strokeWidth="2.5" />
        </svg>
        what is believed; the truth is in the inner range 80 % of the time, in the outer one 95 %
      </span>
      {items.map(({ word, says, doubted, record }) => (
        <span key={word}>
          <svg width="20" height="18" aria-hidden="true">
            <MarkShape says={says} x={10} y={9} doubted={doubted} record={record} />
          </svg>
          {word}
        </span>
      ))}
    </p>
  );
}

const items = [
  { word: 'made: at least this', says: 'atLeast', doubted: false, record: false },
  { word: 'missed: less than this', says: 'lessThan', doubted: false, record: false },
  { word: 'speed or reps left: about this', says: 'near', doubted: false, record: false },
  { word: 'record of its setup', says: 'atLeast', doubted: false, record: true },
  { word: 'hard to believe', says: 'near', doubted: true, record: false },
] as const;
