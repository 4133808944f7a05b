import type { ChainPair } from '#contract/records/gear.ts';
import type { Setup } from '#contract/records/lift.ts';
import { FigureField } from '#web/parts/FigureField.tsx';

/** Pairs of each of the club's chains on a bar, picked by hand; 0 leaves a chain off. */
export function ChainPicks(props: {
  kinds: readonly ChainPair[];
  chains: Setup['chains'];
  onChange: (chains: Setup['chains']) => void;
}) {
  const { kinds, chains, onChange } = props;
  const put = (chainPairId: string, pairs: number) => {
    const others = chains.filter((chain) => chain.chainPairId !== chainPairId);
    onChange(pairs === 0 ? others : [...others, { chainPairId, pairs }]);
  };
  return (
    <div className="fields">
      {kinds.map((kind) => (
        <FigureField
          key={kind.id}
          label={`Chain ${kind.label}`}
          word="pairs"
          whole
          value={chains.find((chain) => chain.chainPairId === kind.id)?.pairs ?? 0}
          min={0}
          max={kind.pairs}
          onChange={(pairs) => put(kind.id, pairs)}
        />
      ))}
    </div>
  );
}
