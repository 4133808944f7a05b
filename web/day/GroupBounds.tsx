import { type Bounds, bounds as boundsShape } from '#contract/records/bounds.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { BoundsFields } from '#web/setup/BoundsFields.tsx';

/** What the proposals of a group keep to: the club's bounds in a line, or its own to change. */
export function GroupBounds(props: { bounds: Bounds | null; onChange: (bounds: Bounds | null) => void }) {
  const { bounds, onChange } = props;
  const { leastBarShare, leastBandShare, mostBandShare, mostPairs, strengthChance } = useClubSettings();
  if (bounds === null) {
    const ofClub = boundsShape.parse({
      leastBarShare,
      leastBandShare,
      mostBandShare,
      mostPairs,
      strengthChance,
    });
    return (
      <div className="stack tight">
        <p className="field-hint">
          By the club's settings at least {percent(leastBarShare)} % of the maximum is on the bar, and bands,
          where they hang, are {percent(leastBandShare)} to {percent(mostBandShare)} % at lockout, {mostPairs}{' '}
          pairs at most. Strength that is not known well is gone by as far as it is there in{' '}
          {percent(strengthChance)} of 100.
        </p>
        <div>
          <button type="button" onClick={() => onChange(ofClub)}>
            Other bounds for this group
          </button>
        </div>
      </div>
    );
  }
  return (
    <div className="stack tight">
      <BoundsFields bounds={bounds} onChange={(change) => onChange({ ...bounds, ...change })} />
      <div>
        <button type="button" className="plain" onClick={() => onChange(null)}>
          The club's bounds
        </button>
      </div>
    </div>
  );
}

function percent(share: number): number {
  return Math.round(share * 100);
}
