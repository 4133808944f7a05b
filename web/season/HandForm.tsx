import { useState } from 'react';
import type { Aim, Block } from '#contract/records/day.ts';
import type { StartAsked } from '#contract/records/method.ts';
import type { PlannedByHand } from '#contract/records/season.ts';
import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { askedOf } from './askedOf.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';

const labels = { lifterId: 'For whom', instead: 'What is done', note: 'Note' };
const asMethod = '';

/** One group of one day as the coach wants it: left out, from another start, or with other sets, reps and shares. It stays, however often the season is planned again. */
export function HandForm(props: {
  date: string;
  /** As it is planned now; null: it is left out. */
  group: GroupOfLifter | null;
  asked: { id: string; title: string };
  kept: PlannedByHand | null;
  season: SeasonView;
  of: LifterSeason;
  onLeave: () => void;
}) {
  const { date, group, asked, kept, season, of, onLeave } = props;
  const records = useRecords('plannedByHand');
  const [isForAll, setForAll] = useState(kept !== null && kept.lifterId === null);
  const [isLeftOut, setLeftOut] = useState(kept !== null && kept.instead === null);
  const [startId, setStartId] = useState(asMethod);
  const [blocks, setBlocks] = useState<Block[] | null>(kept?.instead?.blocks ?? null);
  const [aim, setAim] = useState<Aim | null>(kept?.instead?.aim ?? null);
  const [note, setNote] = useState(kept?.note ?? '');
  const variants = askedOf(season, of, date, asked.id)?.variants ?? [];
  const start: StartAsked | null =
    variants.find(({ id }) => id === startId)?.start ?? kept?.instead?.start ?? null;
  const called = `${asked.title} on ${shortDate(date)}`;
  const draft: Omit<PlannedByHand, 'id'> = {
    seasonId: season.id,
    lifterId: isForAll ? null : of.lifter.id,
    date,
    askedId: asked.id,
    instead: isLeftOut ? null : { start, aim, blocks },
    note,
  };
  // For somebody else it is another record.
  const changed = kept !== null && kept.lifterId === draft.lifterId ? kept : null;
  const fields = useRecordFields('plannedByHand', draft, changed, labels);
  const save = async () => {
    await (changed ? records.update({ ...draft, id: changed.id }, called) : records.create(draft, called));
    onLeave();
  };
  const mainAt = group?.blocks.findLastIndex(({ shareOfAim }) => shareOfAim === 1) ?? -1;
  const shownBlocks = blocks ?? group?.blocks ?? [];
  const main = shownBlocks[mainAt];
  const setMain = (change: Partial<Block>) =>
    setBlocks(shownBlocks.map((block, at) => (at === mainAt ? { ...block, ...change } : block)));
  const shownAim = aim ?? group?.aim ?? null;
  return (
    <RecordForm
      title={`${asked.title}, ${shortDate(date)}`}
      onSave={save}
      onLeave={onLeave}
      wrong={fields.wrong}
      leaveWord="Leave as planned"
      onRemove={
        kept
          ? () => {
              onLeave();
              void records.remove(kept.id, `what was set by hand for ${called}`);
            }
          : undefined
      }
    >
      <SelectField
        label={labels.lifterId}
        value={isForAll ? 'all' : 'one'}
        options={[
          { value: 'one', word: of.lifter.name },
          { value: 'all', word: 'everybody of this season' },
        ]}
        onChange={(whom) => setForAll(whom === 'all')}
      />
      <SelectField
        label={labels.instead}
        value={isLeftOut ? 'leftOut' : 'otherwise'}
        options={[
          { value: 'otherwise', word: 'done otherwise' },
          { value: 'leftOut', word: 'left out' },
        ]}
        onChange={(what) => setLeftOut(what === 'leftOut')}
      />
      {!isLeftOut && variants.length > 1 && (
        <SelectField
          label="Start"
          value={startId}
          options={[
            { value: asMethod, word: kept?.instead?.start ? 'as it is set' : 'as planned' },
            ...variants.map(({ id, title }) => ({ value: id, word: title })),
          ]}
          onChange={setStartId}
        />
      )}
      {!isLeftOut && main && (
        <>
          <FigureField
            label="Sets"
            value={main.sets}
            min={1}
            max={30}
            whole
            onChange={(sets) => setMain({ sets })}
          />
          <FigureField
            label="Reps"
            value={main.reps}
            min={1}
            max={30}
            whole
            onChange={(reps) => setMain({ reps })}
          />
          <FigureField
            label="Rest"
            word="s"
            value={main.restSeconds}
            min={0}
            max={1200}
            whole
            onChange={(restSeconds) => setMain({ restSeconds })}
          />
        </>
      )}
      {!isLeftOut &&
        shownAim?.by === 'percent' &&
        shownAim.targets.map(({ basis, share }, at) => (
          <PercentField
            key={basis}
            label={`Share, ${basisWords.find(({ value }) => value === basis)?.word ?? basis}`}
            value={share}
            min={0.05}
            max={2}
            onChange={(next) =>
              setAim({
                by: 'percent',
                targets: shownAim.targets.map((target, place) =>
                  place === at ? { ...target, share: next } : target,
                ),
              })
            }
          />
        ))}
      <TextField {...fields.text('note')} value={note} onChange={setNote} />
    </RecordForm>
  );
}
