import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { isMinor } from '#contract/calendar/isMinor.ts';
import type { Lift } from '#contract/records/lift.ts';
import { holdsOn, type Lifter } from '#contract/records/lifters.ts';
import { equipmentWord, liftWords } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useClubEstimates } from '#web/api/useClubEstimates.ts';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { FindFields } from '#web/parts/FindFields.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { fewRows, type RowOrder, useFound } from '#web/parts/useFound.ts';
import { useLabel } from '#web/parts/useLabel.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { EstimateProgress } from './EstimateProgress.tsx';
import { HeightsDrawing } from './HeightsDrawing.tsx';
import { type LifterRecords, lifterRecords, straightBest } from './lifterRecords.ts';
import { MaximumCell } from './MaximumCell.tsx';

/** Everybody in the club with the numbers one asks for first. */
export function LifterList() {
  const club = useClub();
  const settings = useClubSettings();
  const units = useUnits();
  const { estimates, progress } = useClubEstimates();
  const estimateOf = useMemo(
    () => new Map(estimates.map((one) => [`${one.lifterId} ${one.lift}`, one])),
    [estimates],
  );
  const [withLeft, setWithLeft] = useState(false);
  const [, navigate] = useLocation();
  const today = localToday(settings.timeZone);
  const leftCount = club.lifter.filter((lifter) => hasLeft(lifter, today)).length;
  const here = club.lifter.filter((lifter) => withLeft || !hasLeft(lifter, today));
  const { label, setLabel, options, isShown } = useLabel(here);
  const maximumKg = ({ lifter, best }: LifterRecords, lift: Lift) =>
    estimateOf.get(`${lifter.id} ${lift}`)?.maxKg.median ?? straightBest(best, lift)?.setup.barKg ?? 0;
  const heaviestBy = (massKg: (row: LifterRecords) => number) => (a: LifterRecords, b: LifterRecords) =>
    massKg(b) - massKg(a) || byName(a, b);
  const found = useFound(
    here
      .filter(isShown)
      .map((lifter) => lifterRecords(club, lifter.id))
      .filter((row) => row !== null),
    ({ lifter }) => [lifter.name, ...lifter.labels, lifter.note],
    [
      { value: 'name', word: 'name', compare: byName },
      { value: 'mass', word: 'body mass', compare: heaviestBy(({ bodyMass }) => bodyMass[0]?.massKg ?? 0) },
      ...liftWords.map(
        ({ value, word }): RowOrder<LifterRecords> => ({
          value,
          word,
          compare: heaviestBy((row) => maximumKg(row, value)),
        }),
      ),
    ],
  );
  const add = (
    <Link href="/new" className="button strong">
      Add a lifter
    </Link>
  );
  if (club.lifter.length === 0) {
    return (
      <div className="stack loose">
        <h1>Lifters</h1>
        <EmptyState
          title="Nobody lifts here yet"
          steps={[
            'Add a lifter by name. Stature is enough to begin: bar heights are then estimated, and marked so.',
            'Measure bottom and lockout of one lift with a tape, from the floor to the centre of the bar.',
            'Write down one best, with everything that was on the bar. It shows what each setup asks of this lifter.',
          ]}
          action={add}
          drawing={<HeightsDrawing units={chartUnits(units, gravityOf(club))} />}
        />
      </div>
    );
  }
  const maximum = (lift: Lift, head: string): Column<LifterRecords> => ({
    key: lift,
    head: `${head}, ${units.mass}`,
    numeric: true,
    wideOnly: lift !== 'squat',
    cell: ({ lifter, best }) => (
      <MaximumCell
        estimate={estimateOf.get(`${lifter.id} ${lift}`)}
        best={straightBest(best, lift)}
        unit={units.mass}
      />
    ),
  });
  const columns: Column<LifterRecords>[] = [
    {
      key: 'name',
      head: 'Name',
      cell: (row) => nameWithMarks(row, today),
    },
    {
      key: 'labels',
      head: 'Labels',
      wideOnly: true,
      cell: ({ lifter }) => lifter.labels.join(', '),
    },
    {
      key: 'equipment',
      head: 'Lifts in',
      wideOnly: true,
      cell: ({ lifter }) => equipmentWord(lifter.equipment),
    },
    {
      key: 'stature',
      head: `Stature, ${units.length}`,
      numeric: true,
      cell: ({ lifter }) => (lifter.statureM === null ? '–' : written(lifter.statureM, units.length)),
    },
    {
      key: 'mass',
      head: `Body, ${units.mass}`,
      numeric: true,
      cell: ({ bodyMass }) => (bodyMass[0] ? written(bodyMass[0].massKg, units.mass, 1) : '–'),
    },
    maximum('squat', 'Squat'),
    maximum('bench', 'Bench'),
    maximum('deadlift', 'Deadlift'),
    {
      key: 'heights',
      head: 'Heights',
      wideOnly: true,
      cell: ({ liftHeights }) => heightsWord(liftHeights.length),
    },
  ];
  return (
    <div className="stack loose">
      <div className="row ends">
        <h1>Lifters</h1>
        <div className="row">{add}</div>
      </div>
      <EstimateProgress progress={progress} />
      <FindFields found={found} label="Name, label or note" isLong={here.length > fewRows}>
        {options.length > 1 && (
          <SelectField label="Label" value={label} options={options} onChange={setLabel} />
        )}
      </FindFields>
      {found.rows.length === 0 && <p>Nobody here matches that.</p>}
      <DataTable
        label="Lifters"
        columns={columns}
        rows={found.rows}
        keyOf={({ lifter }) => lifter.id}
        nameOf={({ lifter }) => lifter.name}
        onOpen={({ lifter }) => navigate(`/${lifter.id}`)}
      />
      {leftCount > 0 && (
        <div>
          <button type="button" className="plain" onClick={() => setWithLeft(!withLeft)}>
            {withLeft ? 'Hide those who left' : `Show those who left (${leftCount})`}
          </button>
        </div>
      )}
      <p className="small quiet">
        Marked <span className="known-mark">est.</span>: today's maximum with straight weight, raw, by the
        whole log, and the range that holds it 80 % of the time. Unmarked: the heaviest straight lift written
        down. <span className="with-keys">Arrows move, letters find a name, Enter opens.</span>
      </p>
    </div>
  );
}

function byName(a: LifterRecords, b: LifterRecords): number {
  return a.lifter.name.localeCompare(b.lifter.name);
}

function hasLeft({ leftOn }: Lifter, today: string): boolean {
  return leftOn !== null && leftOn <= today;
}

function nameWithMarks({ lifter, restriction }: LifterRecords, today: string) {
  const isRestricted = restriction.some((one) => holdsOn(one, today));
  return (
    <>
      {lifter.name}
      {isMinor(lifter.bornOn, today) && <span className="mark lifters-mark">under 18</span>}
      {isRestricted && <span className="mark lifters-mark">restricted</span>}
      {lifter.labels.length > 0 && (
        <span className="phone-only small quiet"> {lifter.labels.join(', ')}</span>
      )}
    </>
  );
}

function heightsWord(count: number): string {
  if (count === 0) return 'estimated';
  return count === 1 ? '1 measured' : `${count} measured`;
}
