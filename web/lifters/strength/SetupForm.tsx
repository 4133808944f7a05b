import { useState } from 'react';
import type { Lift } from '#contract/records/lift.ts';
import { equipmentWords } from '#contract/words/liftWords.ts';
import { competitionSetup } from '#reckon/strength/riggingOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { RackFields } from '#web/setup/RackFields.tsx';
import { StartFields } from '#web/setup/StartFields.tsx';
import type { KeptSetup } from './useKeptSetups.ts';

type Draft = Omit<KeptSetup, 'id' | 'lift'>;

/** A setup to ask the maximum of: start and its height, rack, bands, chains, equipment. */
export function SetupForm(props: { lift: Lift; onSave: (draft: Draft) => void; onLeave: () => void }) {
  const { lift } = props;
  const club = useClub();
  const racks = club.rack.filter((rack) => rack.lifts.includes(lift));
  const [draft, setDraft] = useState<Draft>(() => ({
    equipment: 'raw',
    setup: { ...competitionSetup(lift), rackId: racks[0]?.id ?? null },
  }));
  const setSetup = (change: Partial<Draft['setup']>) =>
    setDraft({ ...draft, setup: { ...draft.setup, ...change } });
  return (
    <RecordForm
      wrong={null}
      title="Another setup"
      onSave={() => {
        props.onSave(draft);
        return Promise.resolve();
      }}
      onLeave={props.onLeave}
      leaveWord="Not now"
    >
      <StartFields
        lift={lift}
        start={draft.setup.start}
        boxes={club.box}
        onChange={(start) => setSetup({ start })}
      />
      <SelectField
        label="Lifted in"
        value={draft.equipment}
        options={equipmentWords}
        onChange={(equipment) => setDraft({ ...draft, equipment })}
      />
      <RackFields lift={lift} setup={draft.setup} onChange={setSetup} />
    </RecordForm>
  );
}
