import { type ReactNode, useState } from 'react';
import { type GivenSet, givenSet } from '#contract/records/loggedSet.ts';
import { equipmentWords, liftWords } from '#contract/words/liftWords.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { fieldIn, figureLimits, textLimits } from '#web/parts/limits.ts';
import { localToday } from '#web/parts/localToday.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { onRange } from './missStops.ts';
import { RackFields } from './RackFields.tsx';
import { SeenFields } from './SeenFields.tsx';
import { StartFields } from './StartFields.tsx';
import { bare, barLimits, type SetDraft } from './setDraft.ts';
import { startOnRange } from './startOnRange.ts';
import { useBarQuestion } from './useBarQuestion.ts';

/** What was found elsewhere and is taken over into the set: a track of the bar, say; it counts `stoppedAtS` from the start. */
export type SeenOfSet = Pick<GivenSet, 'reps' | 'made' | 'meanSpeedsMps' | 'peakSpeedsMps' | 'stoppedAtS'>;

const limits = {
  reps: figureLimits(fieldIn(givenSet.shape, 'reps')),
  place: textLimits(fieldIn(givenSet.shape, 'place')),
  note: textLimits(fieldIn(givenSet.shape, 'note')),
};

/** One set with everything about it. Who, when and which lift are asked only where the day does not tell them. */
export function SetForm(props: {
  title: string;
  initial: SetDraft;
  /** True: lifter, lift and date are those of the day. */
  ofDay: boolean;
  onSave: (set: GivenSet) => Promise<unknown>;
  onLeave: () => void;
  leaveWord: string;
  /** How it went stands above what was on the bar: that is what one adds to a set on record. */
  seenFirst?: boolean;
  /** Another way to fill in how it went, above those fields. */
  door?: (take: (seen: SeenOfSet) => void) => ReactNode;
}) {
  const club = useClub();
  const units = useUnits();
  const today = localToday(useClubSettings().timeZone);
  const [draft, setDraft] = useState(props.initial);
  // Fields that keep what is typed begin anew when a door fills them.
  const [taken, setTaken] = useState(0);
  const put = (change: Partial<SetDraft>) => setDraft((now) => ({ ...now, ...change }));
  const putSetup = (change: Partial<SetDraft['setup']>) =>
    setDraft((now) => ({ ...now, setup: { ...now.setup, ...change } }));
  const { setup, lift } = draft;
  const start = startOnRange(club, draft);
  const askOfBar = useBarQuestion(draft.lifterId, lift, false);
  const save = async () => {
    const { lifterId } = draft;
    const { barKg } = setup;
    if (lifterId === null || barKg === null) return;
    const missed = draft.made < draft.reps;
    await props.onSave({
      ...draft,
      lifterId,
      setup: { ...setup, barKg },
      stoppedAtS: missed ? draft.stoppedAtS : null,
    });
  };
  const pickLift = (next: SetDraft['lift']) => put({ lift: next, setup: { ...setup, ...bare } });
  const seen = <SeenFields key={taken} set={draft} start={start} onChange={put} />;
  return (
    <RecordForm
      title={props.title}
      onSave={save}
      onLeave={props.onLeave}
      leaveWord={props.leaveWord}
      wrong={null}
    >
      {props.seenFirst && seen}
      {!props.ofDay && (
        <>
          <SelectField
            label="Lifter"
            value={draft.lifterId}
            options={club.lifter.map(({ id, name }) => ({ value: id, word: name }))}
            onChange={(lifterId) =>
              put({
                lifterId,
                equipment: club.lifter.find(({ id }) => id === lifterId)?.equipment ?? draft.equipment,
              })
            }
          />
          <TextField
            label="Done on"
            type="date"
            value={draft.doneOn}
            required
            today={today}
            onChange={(doneOn) => put({ doneOn })}
          />
          <SelectField label="Lift" value={lift} options={liftWords} onChange={pickLift} />
        </>
      )}
      <NumberField
        label="On the bar"
        valueSi={setup.barKg}
        unit={units.mass}
        {...barLimits}
        hint="Bar, discs and collars together."
        ask={askOfBar}
        // Another bar than the one that was looked at.
        onChange={(barKg) => put({ setup: { ...setup, barKg }, barChecked: false })}
      />
      <FigureField
        key={`reps ${taken}`}
        label="Reps asked"
        {...limits.reps}
        value={draft.reps}
        onChange={(reps) =>
          put({ reps, made: draft.made === draft.reps ? reps : Math.min(draft.made, reps) })
        }
      />
      <FigureField
        key={`made ${taken} ${draft.reps}`}
        label="Reps made"
        value={draft.made}
        whole
        min={0}
        max={draft.reps}
        onChange={(made) => put({ made })}
      />
      <StartFields
        lift={lift}
        start={setup.start}
        boxes={club.box}
        onChange={(start) => putSetup({ start })}
      />
      <SelectField
        label="Lifted in"
        value={draft.equipment}
        options={equipmentWords}
        onChange={(equipment) => put({ equipment })}
      />
      <RackFields lift={lift} setup={setup} onChange={putSetup} />
      {props.door && (
        <div className="whole-line">
          {props.door((found) => {
            const { stoppedAtS: share } = found;
            put({ ...found, stoppedAtS: share === null ? null : inLog(onRange(share, start)) });
            setTaken((times) => times + 1);
          })}
        </div>
      )}
      {!props.seenFirst && seen}
      {!props.ofDay && (
        <>
          <CheckField label="At a meet" checked={draft.platform} onChange={(platform) => put({ platform })} />
          <TextField
            label="Place"
            {...limits.place}
            value={draft.place}
            onChange={(place) => put({ place })}
          />
        </>
      )}
      <div className="whole-line note-line">
        <TextField label="Note" {...limits.note} value={draft.note} onChange={(note) => put({ note })} />
      </div>
    </RecordForm>
  );
}

/** To a hundredth, within what the log keeps. */
function inLog(s: number): number {
  return Math.min(1, Math.max(-0.2, Math.round(100 * s) / 100));
}
