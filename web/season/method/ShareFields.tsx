import { PercentField } from '#web/parts/PercentField.tsx';
import { InTurnFields } from './InTurnFields.tsx';
import { useMethodFields } from './methodFields.ts';

/** Shares by week of the wave, by wave of the phase, or by height. */
export function ShareFields(props: {
  /** Path of the list. */
  at: string;
  label: string;
  per: 'week' | 'wave' | 'height';
  shares: readonly number[];
  limits: { min: number; max: number };
  most: number;
  onChange: (shares: number[]) => void;
}) {
  const { at, label, per, shares, limits, most, onChange } = props;
  const field = useMethodFields(at);
  return (
    <InTurnFields label={label} per={per} list={shares} most={most} onChange={onChange}>
      {(share, place, of, put) => (
        <PercentField
          key={place}
          {...field(place, `${label}${of}`)}
          {...limits}
          value={share}
          onChange={put}
        />
      )}
    </InTurnFields>
  );
}
