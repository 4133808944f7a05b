import { useState } from 'react';
import { useClub } from '#web/api/useClub.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { dateText } from '#web/parts/localToday.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { SetForm } from '#web/setup/SetForm.tsx';
import { givenAgain, type SetDraft } from '#web/setup/setDraft.ts';
import { repsWords } from '#web/setup/setWords.ts';
import { ChosenDone, ChosenNext } from './ChosenSet.tsx';
import { draftOf } from './draftOf.ts';
import { SetButtons } from './SetButtons.tsx';
import type { PlaceLog } from './useDayLog.ts';

/** One lifter's sets at the rack: tap the set, tap what was made, it is on record and the next one waits. */
export function LogPanel(props: {
  dayId: string;
  dayDate: string;
  lifterId: string;
  name: string;
  log: PlaceLog;
  onClose: () => void;
}) {
  const { dayId, lifterId, name, log, onClose } = props;
  const club = useClub();
  const units = useUnits();
  const say = useToast();
  const writer = useSetWriter();
  const { sets } = log.work;
  // Null: whatever comes next.
  const [picked, setPicked] = useState<number | null>(null);
  const [form, setForm] = useState(false);
  const next = log.done.indexOf(null);
  const chosen = picked ?? (next < 0 ? sets.length : next);
  const planned = sets[chosen] ?? null;
  const done = log.done[chosen] ?? log.extra[chosen - sets.length] ?? null;
  const draft = draftOf({ log, planned, dayId, lifterId });

  const fail = (error: Error) => say(`Nothing was written: ${error.message}`);
  const record = async (set: SetDraft & { setup: { barKg: number } }) => {
    const logged = await writer.log({ ...set, lifterId });
    setPicked(null);
    setForm(false);
    say(`${name}: ${repsWords(logged, units)}, on record.`, () => {
      writer.strike(logged.id).catch(fail);
    });
  };
  const strike = () => {
    if (done === null) return;
    writer
      .strike(done.id)
      .then(
        () =>
          say(`${name}: ${repsWords(done, units)}, struck.`, () => void writer.restore(done.id).catch(fail)),
        fail,
      );
  };
  const pick = (index: number) => {
    setPicked(index);
    setForm(false);
  };
  return (
    <section className="log-panel stack" aria-label={`Sets of ${name}`}>
      <div className="row ends">
        <h4>Sets of {name}</h4>
        <button type="button" onClick={onClose}>
          Close
        </button>
      </div>
      {log.doneOn !== props.dayDate && (
        <p className="small quiet">
          This day is planned for {dateText(props.dayDate)}; what you enter now counts as done today.
        </p>
      )}
      <SetButtons log={log} chosen={chosen} mass={units.mass} onPick={pick} />
      {form ? (
        <SetForm
          key={`${chosen} ${done?.id}`}
          title={done ? `Change set ${chosen + 1}` : `Set ${chosen + 1}, as it was done`}
          initial={done ? givenAgain(done) : draft}
          ofDay
          seenFirst={done !== null}
          leaveWord={done ? 'Leave unchanged' : 'Back'}
          onLeave={() => setForm(false)}
          onSave={async (given) => {
            if (done === null) return record(given);
            await writer.correct(done, given);
            setForm(false);
            return undefined;
          }}
        />
      ) : done ? (
        <ChosenDone
          {...{ set: done, number: chosen + 1, club, units }}
          busy={writer.busy}
          onDetails={() => setForm(true)}
          onStrike={strike}
        />
      ) : (
        <ChosenNext
          {...{ draft, number: chosen + 1, of: sets.length, club, units }}
          busy={writer.busy}
          onMade={(made) => {
            const { barKg } = draft.setup;
            if (barKg !== null) record({ ...draft, setup: { ...draft.setup, barKg }, made }).catch(fail);
          }}
          onDetails={() => setForm(true)}
        />
      )}
    </section>
  );
}
