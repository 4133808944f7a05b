import { type Bounds, bounds as boundsShape } from '#contract/records/bounds.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { figuresIn } from '#web/parts/limits.ts';
import { PercentField } from '#web/parts/PercentField.tsx';

const limits = figuresIn(boundsShape.shape);

/** What proposals keep to, of each lifter's reference maximum. */
export function BoundsFields(props: { bounds: Bounds; onChange: (change: Partial<Bounds>) => void }) {
  const { bounds, onChange } = props;
  return (
    <div className="fields">
      <PercentField
        label="Least on the bar"
        value={bounds.leastBarShare}
        {...limits.leastBarShare}
        hint="Of the maximum; 40 is common practice. A lower aim for the bar overrides it."
        onChange={(leastBarShare) => onChange({ leastBarShare })}
      />
      <PercentField
        label="Least in bands at lockout"
        value={bounds.leastBandShare}
        {...limits.leastBandShare}
        max={Math.min(limits.leastBandShare.max, bounds.mostBandShare)}
        hint="Of the maximum, where any bands hang; 25 is common practice. A bare bar is always allowed."
        onChange={(leastBandShare) => onChange({ leastBandShare })}
      />
      <PercentField
        label="Most in bands at lockout"
        value={bounds.mostBandShare}
        {...limits.mostBandShare}
        min={bounds.leastBandShare}
        hint="Of the maximum; 45 is common practice. An aim for the bar alone and for bar and bands together overrides both."
        onChange={(mostBandShare) => onChange({ mostBandShare })}
      />
      <FigureField
        label="Most pairs at once"
        value={bounds.mostPairs}
        word="pairs"
        {...limits.mostPairs}
        hint="On one bar; more than 3 are never proposed."
        onChange={(mostPairs) => onChange({ mostPairs })}
      />
      <PercentField
        label="How sure of strength"
        value={bounds.strengthChance}
        {...limits.strengthChance}
        hint="For lifters whose strength is not well known, a proposal goes by strength that is there this often. 50 is the middle; 75 is our judgement."
        onChange={(strengthChance) => onChange({ strengthChance })}
      />
    </div>
  );
}
