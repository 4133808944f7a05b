import { fromSi } from '#core/units/units.ts';
import type { NoPull, PairPull } from '#web/gear/state/pairPull.ts';
import { weightText } from '#web/gear/state/pullText.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** One number of the wall chart: the pull, half its interval, and how it is known, in as little room as can be. */
export function PullCell(props: { pull: PairPull | NoPull; gravityMps2: number; safeStretch: number }) {
  const { pull, gravityMps2, safeStretch } = props;
  const { mass } = useUnits();
  if ('not' in pull) return <span className="quiet">{pull.not}</span>;
  if (pull.downN === 0) return <span className="quiet">slack</span>;
  const half = fromSi((pull.high95N - pull.low95N) / 2 / gravityMps2, mass);
  const over = pull.stretch > safeStretch;
  return (
    <span className="pull-cell">
      <span className={`numeral ${over ? 'stop' : ''}`}>
        <span className={pull.from === 'width' ? 'dashed' : ''}>
          {weightText(pull.downN, mass, gravityMps2)}
        </span>
      </span>{' '}
      <span className="known-interval">±{half < 9.95 ? half.toFixed(1) : half.toFixed(0)}</span>
      {(pull.from === 'beyondReadings' || pull.from === 'oneBand') && (
        <span className="known-mark"> est.</span>
      )}
      {pull.from === 'scale' && (
        <span className="predicted">
          <span className="mark">scale</span> predicted {weightText(pull.geometryN, mass, gravityMps2)}
        </span>
      )}
    </span>
  );
}
