import { type Bounds, bounds as boundsShape } from '#contract/records/bounds.ts';
import type { Aim } from '#contract/records/day.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { BoundsFields } from './BoundsFields.tsx';
import { boundsSentence } from './boundsSentence.ts';

/** What the proposals of a group keep to: the club's bounds in a line, or its own to change. */
export function GroupBounds(props: {
  aim: Aim;
  bounds: Bounds | null;
  onChange: (bounds: Bounds | null) => void;
}) {
  const { aim, bounds, onChange } = props;
  const { leastBarShare, leastBandShare, mostBandShare, mostPairs, strengthChance } = useClubSettings();
  const ofClub = boundsShape.parse({
    leastBarShare,
    leastBandShare,
    mostBandShare,
    mostPairs,
    strengthChance,
  });
  return (
    <div className="stack">
      <h3>What may be proposed</h3>
      {bounds === null ? (
        <p className="field-hint">{boundsSentence(aim, ofClub)}</p>
      ) : (
        <BoundsFields bounds={bounds} onChange={(change) => onChange({ ...bounds, ...change })} />
      )}
      <div>
        {bounds === null ? (
          <button type="button" onClick={() => onChange(ofClub)}>
            Other bounds for this group
          </button>
        ) : (
          <button type="button" onClick={() => onChange(null)}>
            Back to the club's bounds
          </button>
        )}
      </div>
    </div>
  );
}
