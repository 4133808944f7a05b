import type { Bounds } from '#contract/records/bounds.ts';
import { FigureField } from '#web/parts/FigureField.tsx';

/** What proposals keep to, of each lifter's reference maximum. */
export function BoundsFields(props: { bounds: Bounds; onChange: (change: Partial<Bounds>) => void }) {
  const { bounds, onChange } = props;
  return (
    <div className="fields">
      <FigureField
        label="Least on the bar"
        value={bounds.leastBarShare}
        per={100}
        word="%"
        min={0}
        max={1}
        hint="Of the maximum. 40 is common practice; percentages of a group that ask for less come first."
        onChange={(leastBarShare) => onChange({ leastBarShare })}
      />
      <FigureField
        label="Least in bands at lockout"
        value={bounds.leastBandShare}
        per={100}
        word="%"
        min={0}
        max={Math.min(1, bounds.mostBandShare)}
        hint="Where any hang; the bare bar is always free. 25 is common practice."
        onChange={(leastBandShare) => onChange({ leastBandShare })}
      />
      <FigureField
        label="Most in bands at lockout"
        value={bounds.mostBandShare}
        per={100}
        word="%"
        min={bounds.leastBandShare}
        max={2}
        hint="45 is common practice. A group that asks for a bar and a whole load says both itself."
        onChange={(mostBandShare) => onChange({ mostBandShare })}
      />
      <FigureField
        label="Most pairs at once"
        value={bounds.mostPairs}
        min={0}
        max={3}
        whole
        onChange={(mostPairs) => onChange({ mostPairs })}
      />
      <FigureField
        label="How sure of strength"
        value={bounds.strengthChance}
        per={100}
        word="%"
        min={0.5}
        max={0.95}
        hint="Of lifters who are not known well, a proposal takes the strength that is there with this chance. 50 is the middle; 75 is a judgement."
        onChange={(strengthChance) => onChange({ strengthChance })}
      />
    </div>
  );
}
