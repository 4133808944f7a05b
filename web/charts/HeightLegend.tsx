import { useId } from 'react';
import { Patterns, patternFill } from './Patterns.tsx';
import { paint } from './paint.ts';

/**
 * What the fills and lines of the picture mean; `lifts` where a band hung from above carries part of the bar, `moves`
 * names what can be taken hold of.
 */
export function HeightLegend({ lifts = false, moves }: { lifts?: boolean; moves: string }) {
  const id = useId();
  const items = [
    { word: 'straight weight', fill: paint.iron },
    { word: 'chain', fill: patternFill(id, 'chain') },
    { word: 'band', fill: patternFill(id, 'band') },
    ...(lifts ? [{ word: 'carried by the band', fill: patternFill(id, 'bandUp') }] : []),
  ];
  return (
    <p className="chart-legend small quiet">
      {items.map(({ word, fill }, i) => (
        <span key={word}>
          <svg width="20" height="14" aria-hidden="true">
            {i === 0 && <Patterns id={id} />}
            <rect x="0.5" y="0.5" width="19" height="13" fill={fill} stroke={paint.ironLine} />
          </svg>
          {word}
        </span>
      ))}
      <span>
        <svg width="26" height="14" aria-hidden="true">
          <rect y="2" width="26" height="10" fill={paint.ink} fillOpacity="0.14" />
          <path d="M0 7h26" stroke={paint.ink} strokeWidth="3.5" />
        </svg>
        what this lifter can hold still there, with its range
      </span>
      <span>
        <svg width="26" height="14" aria-hidden="true">
          <path d="M0 7h26" stroke={paint.go} strokeWidth="2.5" />
          <circle cx="13" cy="7" r="4" fill={paint.paper} stroke={paint.go} strokeWidth="2.5" />
        </svg>
        bar speed and its slowest point
      </span>
      <span className="screen-only">
        <svg width="20" height="22" aria-hidden="true">
          <rect
            x="5"
            y="1"
            width="10"
            height="20"
            rx="2"
            fill={paint.paper}
            stroke={paint.ink}
            strokeWidth="1.5"
          />
          <path d="M8.5 7v8m3 0v-8" stroke={paint.ink} />
        </svg>
        {moves}
      </span>
    </p>
  );
}
