import type { BandPair, HookupRecord } from '#contract/records/gear.ts';
import type { BandOnBar } from '#contract/records/lift.ts';
import { SelectField } from '#web/parts/SelectField.tsx';

const mostPairs = 3;

/** Band pairs on a bar, each with one of the rack's hookups, picked by hand. */
export function BandPicks(props: {
  pairs: readonly BandPair[];
  hookups: readonly HookupRecord[];
  bands: readonly BandOnBar[];
  onChange: (bands: BandOnBar[]) => void;
}) {
  const { pairs, hookups, bands, onChange } = props;
  const put = (index: number, change: Partial<BandOnBar>) =>
    onChange(bands.map((band, i) => (i === index ? { ...band, ...change } : band)));
  const free = pairs.filter((pair) => !bands.some((band) => band.bandPairId === pair.id));
  const [firstHookup] = hookups;
  if (firstHookup === undefined) {
    return (
      <p className="small quiet">This rack has no hookup for this lift; add one under Gear to hang bands.</p>
    );
  }
  return (
    <div className="stack tight">
      {bands.map((band, index) => (
        <div key={index} className="fields picks">
          <SelectField
            label={`Band pair ${index + 1}`}
            value={band.bandPairId}
            options={pairs
              .filter((pair) => pair.id === band.bandPairId || free.includes(pair))
              .map((pair) => ({ value: pair.id, word: `${pair.label}, ${pair.widthMm} mm` }))}
            onChange={(bandPairId) => put(index, { bandPairId })}
          />
          <SelectField
            label="Hung"
            value={band.hookupId}
            options={hookups.map((hookup) => ({ value: hookup.id, word: hookup.label }))}
            onChange={(hookupId) => put(index, { hookupId })}
          />
          <button
            type="button"
            className="plain"
            aria-label={`Take band pair ${index + 1} off`}
            onClick={() => onChange(bands.filter((_, i) => i !== index))}
          >
            Take off
          </button>
        </div>
      ))}
      {bands.length === 0 && <p className="quiet">No bands on this bar.</p>}
      {bands.length < mostPairs && free[0] && (
        <div>
          <button
            type="button"
            className="plain"
            onClick={() => onChange([...bands, { bandPairId: free[0]!.id, hookupId: firstHookup.id }])}
          >
            Hang a pair
          </button>
        </div>
      )}
    </div>
  );
}
