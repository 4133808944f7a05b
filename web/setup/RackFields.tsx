import type { Lift, Setup } from '#contract/records/lift.ts';
import { useClub } from '#web/api/useClub.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { BandFields } from './BandFields.tsx';

type AtRack = Pick<Setup, 'rackId' | 'bands' | 'chains'>;

/** The rack of a set, and what hangs on the bar there. Choosing another rack takes bands and chains off, since its hookups are others. */
export function RackFields(props: {
  lift: Lift;
  setup: AtRack;
  onChange: (change: Partial<AtRack>) => void;
}) {
  const { lift, setup, onChange } = props;
  const club = useClub();
  const racks = club.rack.filter((rack) => rack.lifts.includes(lift));
  return (
    <>
      <SelectField
        label="Rack"
        value={setup.rackId ?? ''}
        options={[
          { value: '', word: 'none of ours' },
          ...racks.map((rack) => ({ value: rack.id, word: rack.label })),
        ]}
        onChange={(rackId) => onChange({ rackId: rackId === '' ? null : rackId, bands: [], chains: [] })}
      />
      <div className="whole-line">
        <BandFields club={club} rackId={setup.rackId} lift={lift} setup={setup} onChange={onChange} />
      </div>
    </>
  );
}
