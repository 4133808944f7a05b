import { useEffect, useRef, useState } from 'react';
import type { WrittenStep } from '#contract/paper/RackSheetModel.ts';
import { dateText } from '#contract/words/dateText.ts';
import { useClub } from '#web/api/useClub.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { useNewest } from '#web/parts/useNewest.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { SetForm } from '#web/setup/SetForm.tsx';
import { givenAgain, type SetDraft } from '#web/setup/setDraft.ts';
import { repsWords } from '#web/setup/setWords.ts';
import { startOnRange } from '#web/setup/startOnRange.ts';
import { LastTimeLine } from '../lastTime/LastTimeLine.tsx';
import { ChosenDone, ChosenNext } from './ChosenSet.tsx';
import { draftOf } from './draftOf.ts';
import { MissAsked } from './MissAsked.tsx';
import { SetButtons } from './SetButtons.tsx';
import type { PlaceLog } from './useDayLog.ts';

/** One lifter's sets at the rack: tap the set, tap what was made, it is on record and the next one waits. */
export function LogPanel(props: {
  dayId: string;
  groupId: string;
  dayDate: string;
  lifterId: string;
  name: string;
  log: PlaceLog;
  /** How each step is written, and what it is expected to do. */
  steps: readonly WrittenStep[];
  onClose: () => void;
}) {
  const { dayId, lifterId, name, log, steps, onClose } = props;
  const club = useClub();
  const units = useUnits();
  const say = useToast();
  const writer = useSetWriter();
  const { sets } = log.work;
  // Null: whatever comes next.
  const [picked, setPicked] = useState<number | null>(null);
  const [form, setForm] = useState(false);
  // What was tapped of a set with a miss, until it is said where the miss stopped.
  const [missedAfter, setMissedAfter] = useState<{ made: number; meanSpeedsMps: number[] } | null>(null);
  const panel = useRef<HTMLElement>(null);
  // The buttons for what was made are the reason to be here, and stay in sight from set to set.
  useEffect(() => {
    panel.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const next = log.done.indexOf(null);
  const chosen = picked ?? (next < 0 ? sets.length : next);
  const planned = sets[chosen] ?? null;
  const done = log.done[chosen] ?? log.extra[chosen - sets.length] ?? null;
  const draft = draftOf({ log, planned, dayId, lifterId });

  const fail = (error: Error) => say(`Nothing was written: ${error.message}`);
  type WholeSet = SetDraft & { setup: { barKg: number } };
  const write = async (set: WholeSet) => {
    const logged = await writer.log({ ...set, lifterId });
    say(`${name}: ${repsWords(logged, units)}, on record.`, () => {
      writer.strike(logged.id).catch(fail);
    });
  };
  const record = async (set: WholeSet) => {
    await write(set);
    setPicked(null);
    setForm(false);
    setMissedAfter(null);
    panel.current?.scrollIntoView({ block: 'nearest' });
  };
  const made = (
    seen: Pick<SetDraft, 'made' | 'meanSpeedsMps' | 'stoppedAtS'>,
    keep: (set: WholeSet) => Promise<void>,
  ) => {
    const { barKg } = draft.setup;
    if (barKg !== null) keep({ ...draft, setup: { ...draft.setup, barKg }, ...seen }).catch(fail);
  };
  // A miss that was tapped is on record even if nobody says where it stopped.
  const unanswered = useNewest(() => {
    if (missedAfter !== null) made({ ...missedAfter, stoppedAtS: null }, write);
  });
  useEffect(() => () => unanswered.current(), [unanswered]);
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
    unanswered.current();
    setPicked(index);
    setForm(false);
    setMissedAfter(null);
  };
  return (
    <section ref={panel} className="log-panel stack" aria-label={`Sets of ${name}`}>
      <div className="row ends">
        <h4>Sets of {name}</h4>
        <button type="button" onClick={onClose}>
          Close
        </button>
      </div>
      <LastTimeLine {...{ dayId, lifterId }} groupId={props.groupId} />
      {log.doneOn !== props.dayDate && (
        <p className="small quiet">
          This day is planned for {dateText(props.dayDate)}; what you enter now counts as done today.
        </p>
      )}
      <SetButtons log={log} chosen={chosen} mass={units.mass} written={steps} onPick={pick} />
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
      ) : missedAfter !== null ? (
        <MissAsked
          reps={draft.reps}
          made={missedAfter.made}
          start={startOnRange(club, draft)}
          busy={writer.busy}
          onAnswer={(stoppedAtS) => made({ ...missedAfter, stoppedAtS }, record)}
          onBack={() => setMissedAfter(null)}
        />
      ) : (
        <ChosenNext
          key={chosen}
          {...{ draft, number: chosen + 1, of: sets.length, club, units }}
          step={planned === null ? null : (steps[planned.step] ?? null)}
          busy={writer.busy}
          onMade={(count, meanSpeedsMps) =>
            count === draft.reps
              ? made({ made: count, meanSpeedsMps, stoppedAtS: null }, record)
              : setMissedAfter({ made: count, meanSpeedsMps })
          }
          onDetails={() => setForm(true)}
        />
      )}
    </section>
  );
}
