import { useState } from 'react';
import { lastTime, rackFor } from '#contract/day/rackFor.ts';
import type { Day, Group } from '#contract/records/day.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { isFound } from '#web/parts/isFound.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { useLabel } from '#web/parts/useLabel.ts';
import { useNewest } from '#web/parts/useNewest.ts';
import { backFrom, comesTo, isAway } from './whoIsHere.ts';

/** Everybody of the club to tick: who is here lifts with the group, at the rack of the last time; who is away keeps the place. */
export function WhoIsHere(props: {
  day: Day;
  group: Group;
  racks: readonly { id: string; label: string }[];
  /** In whose order the loads were worked out; null: not yet. */
  planned: readonly string[] | null;
  onChange: (group: Group) => void;
}) {
  const { day, group, racks, onChange } = props;
  const [opened] = useState(() => group.places.map(({ lifterId }) => lifterId));
  // Who is ticked off by mistake stands where they stood, so that the loads still hold.
  const earlier = props.planned ?? opened;
  const records = useClub();
  const say = useToast();
  const [asked, setAsked] = useState('');
  const before = lastTime(records.day, day, group);
  const rackIds = racks.map(({ id }) => id);
  const joinedBy = (lifterIds: readonly string[]) =>
    lifterIds.reduce((now, id) => {
      const rackId = rackFor(now, id, rackIds, before?.group ?? null);
      return rackId === null ? now : comesTo(now, id, rackId, earlier);
    }, group);
  const isHere = (id: string) => group.places.some((place) => place.lifterId === id);
  const belongs = (id: string) => isHere(id) || group.away.some((place) => place.lifterId === id);
  const rank = ({ id }: Lifter) => (belongs(id) ? 0 : 1);
  const all = records.lifter
    .filter(({ id, leftOn }) => leftOn === null || belongs(id))
    .sort((a, b) => rank(a) - rank(b) || a.name.localeCompare(b.name));
  const { label, setLabel, options, isShown } = useLabel(records.lifter);
  const shown = all.filter((lifter) => isShown(lifter) && isFound([lifter.name, ...lifter.labels], asked));
  const missing = (ids: readonly string[]) =>
    ids.filter((id) => !isHere(id) && all.some((one) => one.id === id));
  const lastIds = missing(before?.group.places.map(({ lifterId }) => lifterId) ?? []);
  const shownIds = missing(shown.map(({ id }) => id));
  // An undo comes later than the tap: it takes these out of the group as it is then.
  const newest = useNewest({ group, onChange });
  const take = (ids: readonly string[], words: string) => {
    onChange(joinedBy(ids));
    say(`${words}: ${ids.length} more in this group.`, () => {
      const now = newest.current;
      now.onChange(backFrom(now.group, group, ids));
    });
  };
  const rackOf = (id: string) => {
    const rackId = group.places.find((place) => place.lifterId === id)?.rackId;
    return racks.find((rack) => rack.id === rackId)?.label;
  };
  return (
    <section className="stack tight who-is-here screen-only" aria-label={`Who is here, ${group.title}`}>
      <div className="row base ends here-head">
        <h3>
          {group.places.length} here
          {group.away.length > 0 && `, ${group.away.length} away`}
        </h3>
        {all.length > 10 && <TextField label="Find by name or label" value={asked} onChange={setAsked} />}
        {options.length > 1 && (
          <SelectField
            label="Show, here and on the racks"
            value={label}
            options={options}
            onChange={setLabel}
          />
        )}
        <div className="row here-ways">
          {before && lastIds.length > 0 && (
            <button type="button" onClick={() => take(lastIds, `Everybody of ${shortDate(before.date)}`)}>
              Everybody of {shortDate(before.date)}
            </button>
          )}
          {(asked !== '' || label !== '') && shownIds.length > 1 && (
            <button
              type="button"
              onClick={() => take(shownIds, `All found by ${[label, asked].filter(Boolean).join(', ')}`)}
            >
              All {shownIds.length} found
            </button>
          )}
        </div>
      </div>
      <ul className="here-list">
        {shown.map(({ id, name, labels }) => (
          <li key={id}>
            <CheckField
              label={name}
              checked={isHere(id)}
              onChange={(here) => onChange(here ? joinedBy([id]) : isAway(group, id))}
            />
            <span className="small quiet">
              {[rackOf(id) ?? (belongs(id) ? 'away' : null), ...labels].filter(Boolean).join(' · ')}
            </span>
          </li>
        ))}
      </ul>
      {shown.length === 0 && <p className="quiet">Nobody in the club has such a name or label.</p>}
    </section>
  );
}
