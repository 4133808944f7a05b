import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { ChainFields } from './ChainFields.tsx';
import { freeChains } from './chainChoices.ts';

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
  const { club, rackId, lift, onChange } = props;
  const { bands, chains } = props.setup;
  const hookups = club.hookup.filter((hookup) => hookup.rackId === rackId && hookup.lifts.includes(lift));
  const rack = club.rack.find((candidate) => candidate.id === rackId);
  const [firstHookup] = hookups;
  const pairs = club.bandPair.filter((pair) => pair.retiredOn === null).sort((a, b) => a.widthMm - b.widthMm);
  const freePairs = pairs.filter((pair) => !bands.some((band) => band.bandPairId === pair.id));
  const [freePair] = freePairs;
  const [freeChain] = rack?.takesChains ? freeChains(club, chains) : [];
  const setBands = (next: Setup['bands']) => onChange({ bands: next, chains });
  const setBand = (index: number, change: Partial<Setup['bands'][number]>) =>
    setBands(bands.map((band, i) => (i === index ? { ...band, ...change } : band)));
  const needsRack = club.rack.some((one) => one.lifts.includes(lift))
    ? 'Bands need the rack they hang on: choose it first.'
    : 'Bands need a rack; add one under Gear.';
  return (
    <div className="stack">
      {bands.map((band, i) => (
        <div key={i} className="band-fields">
          <SelectField
            label={`Band pair ${i + 1}`}
            value={band.bandPairId}
            options={club.bandPair
              .filter((pair) => pair.id === band.bandPairId || freePairs.includes(pair))
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
            onClick={() => setBands(bands.filter((_, j) => j !== i))}
          >
            Take off
          </button>
        </div>
      ))}
      <ChainFields club={club} chains={chains} onChange={(next) => onChange({ bands, chains: next })} />
      <div className="row">
        {firstHookup && freePair ? (
          <button
            type="button"
            disabled={bands.length >= mostPairs}
            onClick={() =>
              setBands([
                ...bands,
                { bandPairId: freePair.id, hookupId: bands[0]?.hookupId ?? firstHookup.id },
              ])
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
        {freeChain && (
          <button
            type="button"
            onClick={() => onChange({ bands, chains: [...chains, { chainPairId: freeChain.id, pairs: 1 }] })}
          >
            {chains.length === 0 ? 'Hang chains' : 'Hang another kind of chain'}
          </button>
        )}
      </div>
    </div>
  );
}
