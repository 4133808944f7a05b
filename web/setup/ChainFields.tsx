import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Setup } from '#contract/records/lift.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { chainChoices, chainKey } from './chainChoices.ts';

type Chains = Setup['chains'];

/** Every kind of chain that hangs, a row each: how many pairs of which, or off with it. */
export function ChainFields(props: {
  club: ClubRecords;
  chains: Chains;
  onChange: (chains: Chains) => void;
}) {
  const { club, chains, onChange } = props;
  return chains.map((own, i) => {
    const choices = chainChoices(club, chains, own);
    const label = chains.length === 1 ? 'Chains' : `Chains ${i + 1}`;
    return (
      <div key={i} className="band-fields chain-fields">
        <SelectField
          label={label}
          value={chainKey(own)}
          options={choices}
          onChange={(value) => {
            const picked = choices.find((choice) => choice.value === value);
            if (picked) onChange(chains.map((chain, j) => (j === i ? picked.chain : chain)));
          }}
        />
        <button
          type="button"
          className="plain"
          aria-label={`Take ${label.toLowerCase()} off`}
          onClick={() => onChange(chains.filter((_, j) => j !== i))}
        >
          Take off
        </button>
      </div>
    );
  });
}
