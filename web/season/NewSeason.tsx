import { useState } from 'react';
import { useLocation } from 'wouter';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useFoundSeason } from '#web/api/useFoundSeason.ts';
import { localToday } from '#web/parts/localToday.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { LifterTicks } from '#web/setup/LifterTicks.tsx';
import { type MeetDraft, MeetFields } from './MeetFields.tsx';
import { MeetTicks } from './MeetTicks.tsx';
import { methodChoices } from './methodChoices.ts';

/** A season from few fields: who, by which method, from which day, up to which meets. Everything can be changed afterwards. */
export function NewSeason() {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const [, go] = useLocation();
  const found = useFoundSeason();
  const choices = methodChoices(club);
  const [title, setTitle] = useState('');
  const [methodValue, setMethod] = useState<string | null>(null);
  const [fromOn, setFromOn] = useState(() => daysLater(mondayOf(today), 7));
  const ahead = club.meet.filter(({ date }) => date > today).sort((a, b) => a.date.localeCompare(b.date));
  const [meetIds, setMeetIds] = useState<readonly string[]>([]);
  const [drafts, setDrafts] = useState<readonly MeetDraft[]>(ahead.length === 0 ? [noMeet] : []);
  const [lifterIds, setLifterIds] = useState<readonly string[]>([]);
  const choice = choices.find(({ value }) => value === methodValue);
  const meets = drafts.filter((draft) => draft.title !== '' || draft.date !== '');
  const dates = [
    ...ahead.filter(({ id }) => meetIds.includes(id)).map(({ date }) => date),
    ...meets.map(({ date }) => date),
  ];
  const wrong =
    dates.length === 0
      ? 'Meets: a season is planned backwards from at least one.'
      : (dates.find((date) => date !== '' && date <= fromOn) ?? null) !== null
        ? `Meets: each must be after the first day, ${dateText(fromOn)}.`
        : dates.length > 4
          ? `Meets: ${dates.length} are chosen; at most 4 belong to a season.`
          : lifterIds.length === 0
            ? 'Lifters: tick at least one.'
            : null;
  const save = async () => {
    if (choice === undefined) throw new Error('Method: choose one.');
    const method = choice.keptId === null ? { document: choice.method } : { id: choice.keptId };
    const id = await found({
      title,
      fromOn,
      method,
      meetIds: [...meetIds],
      newMeets: meets,
      lifterIds: [...lifterIds],
    });
    go(`/${id}`);
  };
  return (
    <div className="stack loose season-new">
      <h1>New season</h1>
      <p>
        The phases are laid backwards from the meet, in waves, and each week is filled with days, groups and
        aims. You see the whole before anything goes to the Day screen.
      </p>
      <RecordForm
        title="What it is planned from"
        onSave={save}
        onLeave={() => go('/')}
        leaveWord="Not now"
        saveWord="Plan this season"
        wrong={wrong}
      >
        <TextField label="Title" value={title} onChange={setTitle} required maxLength={80} />
        <SelectField label="Method" value={methodValue} options={choices} onChange={setMethod} />
        <TextField
          label="First day"
          type="date"
          value={fromOn}
          onChange={setFromOn}
          required
          hint="What has no room before the meet is cut, and you are told what."
        />
        {choice && (
          <p className="small quiet season-whole">
            <b>{choice.method.title}.</b> {choice.method.says} {choice.method.forWhom}
          </p>
        )}
        <fieldset className="season-whole stack tight season-ticks">
          <legend className="field-label">Meets</legend>
          <MeetTicks meets={ahead} ticked={meetIds} onChange={setMeetIds} />
          {drafts.map((draft, at) => (
            <MeetFields
              key={at}
              draft={draft}
              number={at + 1}
              onChange={(next) => setDrafts(drafts.map((one, place) => (place === at ? next : one)))}
            />
          ))}
          <div>
            <button type="button" className="plain" onClick={() => setDrafts([...drafts, noMeet])}>
              {drafts.length + ahead.length === 0 ? 'Add a meet' : 'Add another meet'}
            </button>
          </div>
        </fieldset>
        <LifterTicks
          lifters={club.lifter.filter(({ leftOn }) => leftOn === null || leftOn > today)}
          ticked={lifterIds}
          onChange={setLifterIds}
        />
        <p className="season-whole small quiet">{counted(lifterIds.length, 'lifter')} in this season.</p>
      </RecordForm>
    </div>
  );
}

const noMeet: MeetDraft = { title: '', date: '' };
