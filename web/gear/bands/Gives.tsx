import type { NoPull, PairPull } from '#web/gear/state/pairPull.ts';
import { fromWords, intervalText, knownFrom, weightText } from '#web/gear/state/pullText.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** What a pair gives, with its interval and how it is known. Upwards is said in words. */
export function Gives(props: { pull: PairPull | NoPull; gravityMps2: number; size?: 'row' | 'lead' }) {
  const { pull, gravityMps2, size = 'row' } = props;
  const { mass } = useUnits();
  if ('not' in pull) return <span className="quiet">{pull.not}</span>;
  if (pull.downN === 0) return <span className="quiet">slack</span>;
  const interval = intervalText(pull, mass, gravityMps2);
  const known = knownFrom[pull.from];
  return (
    <span className="gives">
      <Known
        value={weightText(pull.downN, mass, gravityMps2)}
        unit={mass}
        known={known}
        interval={interval}
        size={size}
        {...(known === 'measured' ? {} : { why: fromWords[pull.from] })}
      />
      {known === 'measured' && <span className="known-interval">{interval}</span>}
    </span>
  );
}
