import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import { SelectField } from '#web/parts/SelectField.tsx';

/** More pairs than this on one bar nobody hangs; a record holds no more. */
const mostPairs = 6;

/** Bands and chains on the bar at one rack: which pairs, hung how. */
export function BandFields(props: {
  club: ClubRecords;
  rackId: string | null;
  lift: Lift;
  setup: Pick<Setup, 'bands' | 'chains'>;
  onChange: (change: Pick<Setup, 'bands' | 'chains'>) => void;
}) {
  const { club, rackId, lift, setup, onChange } = props;
  const hookups = club.hookup.filter((hookup) => hookup.rackId === rackId && hookup.lifts.includes(lift));
  const rack = club.rack.find((candidate) => candidate.id === rackId);
  const [firstHookup] = hookups;
  const pairs = club.bandPair.filter((pair) => pair.retiredOn === null).sort((a, b) => a.widthMm - b.widthMm);
  const free = pairs.find((pair) => !setup.bands.some((band) => band.bandPairId === pair.id));
  const setBand = (index: number, change: Partial<Setup['bands'][number]>) =>
    onChange({
      ...setup,
      bands: setup.bands.map((band, i) => (i === index ? { ...band, ...change } : band)),
    });
  const needsRack = club.rack.some((one) => one.lifts.includes(lift))
    ? 'Bands need the rack they hang on: choose it first.'
    : 'Bands need a rack; add one under Gear.';
  const [chain] = setup.chains;
  return (
    <div className="stack">
      {setup.bands.map((band, i) => (
        <div key={i} className="band-fields">
          <SelectField
            label={`Band pair ${i + 1}`}
            value={band.bandPairId}
            options={pairs
              .filter(
                (pair) => pair.id === band.bandPairId || !setup.bands.some((b) => b.bandPairId === pair.id),
              )
              .map((pair) => ({ value: pair.id, word: `${pair.label}, ${pair.widthMm} mm` }))}
            onChange={(bandPairId) => setBand(i, { bandPairId })}
          />
          <SelectField
            label="Hung"
            value={band.hookupId}
            options={hookups.map((hookup) => ({ value: hookup.id, word: hookup.label }))}
            onChange={(hookupId) => setBand(i, { hookupId })}
          />
          <button
            type="button"
            className="plain"
            aria-label={`Take band pair ${i + 1} off`}
            onClick={() => onChange({ ...setup, bands: setup.bands.filter((_, j) => j !== i) })}
          >
            Take off
          </button>
        </div>
      ))}
      {rack?.takesChains && club.chainPair.length > 0 && (
        <SelectField
          label="Chains"
          value={chain ? `${chain.chainPairId} ${chain.pairs}` : ''}
          options={[
            { value: '', word: 'none' },
            ...club.chainPair.flatMap((kind) =>
              Array.from({ length: kind.pairs }, (_, n) => ({
                value: `${kind.id} ${n + 1}`,
                word: `${n === 0 ? 'a pair' : `${n + 1} pairs`} of ${kind.label}`,
              })),
            ),
          ]}
          onChange={(value) => {
            const [chainPairId, count] = value.split(' ');
            onChange({ ...setup, chains: chainPairId ? [{ chainPairId, pairs: Number(count) }] : [] });
          }}
        />
      )}
      <div>
        {firstHookup && free ? (
          <button
            type="button"
            disabled={setup.bands.length >= mostPairs}
            onClick={() =>
              onChange({
                ...setup,
                bands: [
                  ...setup.bands,
                  { bandPairId: free.id, hookupId: setup.bands[0]?.hookupId ?? firstHookup.id },
                ],
              })
            }
          >
            Hang a pair of bands
          </button>
        ) : (
          <p className="small quiet">
            {rack === undefined
              ? needsRack
              : firstHookup === undefined
                ? 'This rack has no hookup for this lift; add one under Gear.'
                : pairs.length === 0
                  ? 'There is no band yet; hang the first one from a scale under Gear.'
                  : 'Every pair of bands hangs already.'}
          </p>
        )}
      </div>
    </div>
  );
}
