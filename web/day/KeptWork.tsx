import { useState } from 'react';
import type { Group } from '#contract/records/day.ts';
import { useClub } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { groupFromWork } from '#web/setup/startingPoints.ts';

/** The club's store of work: keeps what this group does under a name, or begins the group again from what was kept. */
export function KeptWork({ group, onChange }: { group: Group; onChange: (group: Group) => void }) {
  const { workTemplate: kept } = useClub();
  const works = useRecords('workTemplate');
  const say = useToast();
  const [label, setLabel] = useState(group.title);
  const [wrong, setWrong] = useState<string | null>(null);
  const [chosen, setChosen] = useState('');
  const work = kept.find(({ id }) => id === chosen) ?? kept[0];
  const keep = async () => {
    const { work, lift, start, aim, blocks, leastChance, bounds } = group;
    try {
      await works.create({ label, work, lift, start, aim, blocks, leastChance, bounds }, label);
      setWrong(null);
    } catch (error) {
      setWrong(error instanceof Error ? error.message : String(error));
    }
  };
  const beginAgain = () => {
    if (work === undefined) return;
    const sameLift = work.lift === group.lift;
    const still = (places: Group['places']) =>
      places.map((place) => ({ ...place, start: sameLift ? place.start : null, byCoach: null }));
    onChange({
      ...groupFromWork(group.id, work),
      places: still(group.places),
      away: still(group.away),
    });
    say(`This group does ${work.label} now. What was set by hand is gone.`, () => onChange(group));
  };
  return (
    <>
      <h3>Kept work</h3>
      <div className="fields">
        <TextField label="Keep this work as" value={label} onChange={setLabel} error={wrong} />
        <button type="button" className="beside-field" disabled={works.busy} onClick={() => void keep()}>
          Keep it for later
        </button>
      </div>
      {work && (
        <div className="fields">
          <SelectField
            label="Begin again from"
            value={work.id}
            options={kept.map((one) => ({ value: one.id, word: one.label }))}
            hint={work.note}
            onChange={setChosen}
          />
          <div className="row beside-field">
            <button type="button" onClick={beginAgain}>
              Begin again from it
            </button>
            <button type="button" className="plain" onClick={() => void works.remove(work.id, work.label)}>
              Remove it from the club
            </button>
          </div>
        </div>
      )}
    </>
  );
}
