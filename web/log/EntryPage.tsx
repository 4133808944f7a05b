import { useState } from 'react';
import { Link } from 'wouter';
import { nothingSeen } from '#contract/records/loggedSet.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { localToday } from '#web/parts/localToday.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { SetForm } from '#web/setup/SetForm.tsx';
import { emptySet, type SetDraft } from '#web/setup/setDraft.ts';
import { repsWords } from '#web/setup/setWords.ts';
import { TrackDoor } from './track/TrackDoor.tsx';

/** A set that no prescription asked for. After it is written the next one begins as this one was. */
export function EntryPage() {
  const club = useClub();
  const units = useUnits();
  const say = useToast();
  const writer = useSetWriter();
  const today = localToday(useClubSettings().timeZone);
  const [written, setWritten] = useState<{ times: number; initial: SetDraft }>({
    times: 0,
    initial: emptySet('squat', today),
  });
  return (
    <div className="stack">
      <div className="row ends">
        <Link href="/" className="log-back">
          The log
        </Link>
      </div>
      <h1>Enter a set</h1>
      {club.lifter.length === 0 ? (
        <p>
          The club has no lifters yet: <Link href="~/lifters/new">add the first one</Link>, then come back.
        </p>
      ) : (
        <SetForm
          key={written.times}
          title="A set that was done"
          initial={written.initial}
          ofDay={false}
          leaveWord="Back"
          onLeave={() => history.back()}
          door={(take) => <TrackDoor onTake={take} />}
          onSave={async (given) => {
            const logged = await writer.log(given);
            const name = club.lifter.find(({ id }) => id === given.lifterId)?.name ?? '';
            setWritten(({ times }) => ({
              times: times + 1,
              initial: { ...given, ...nothingSeen, bodyMassKg: given.bodyMassKg, made: given.reps, note: '' },
            }));
            say(`${name}: ${repsWords(logged, units)}, on record.`, () => {
              writer.strike(logged.id).catch((error: Error) => say(error.message));
            });
          }}
        />
      )}
    </div>
  );
}
