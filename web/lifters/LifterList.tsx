import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
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
import { isNamed } from '#web/parts/isNamed.ts';
import { localToday } from '#web/parts/localToday.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { isMinor } from './age.ts';
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
  const [named, setNamed] = useInAddress('name');
  const [orderAsked, setOrder] = useInAddress('by', 'name');
  const order = orderWords.find(({ value }) => value === orderAsked)?.value ?? 'name';
  const [, navigate] = useLocation();
  const today = localToday(settings.timeZone);
  const leftCount = club.lifter.filter((lifter) => hasLeft(lifter, today)).length;
  const here = club.lifter.filter((lifter) => withLeft || !hasLeft(lifter, today));
  const rankOf = ({ lifter, bodyMass, best }: LifterRecords) => {
    if (order === 'name') return 0;
    if (order === 'mass') return bodyMass[0]?.massKg ?? 0;
    return (
      estimateOf.get(`${lifter.id} ${order}`)?.maxKg.median ?? straightBest(best, order)?.setup.barKg ?? 0
    );
  };
  const rows = here
    .filter((lifter) => isNamed(lifter, named))
    .map((lifter) => lifterRecords(club, lifter.id))
    .filter((row) => row !== null)
    .sort((a, b) => rankOf(b) - rankOf(a) || a.lifter.name.localeCompare(b.lifter.name));
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
            'Write down one best, with everything that was on the bar. From it follows what each setup asks of this lifter.',
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
      {here.length > fewLifters && (
        <div className="fields screen-only">
          <TextField label="Name" value={named} onChange={setNamed} />
          <SelectField label="In order of" value={order} options={orderWords} onChange={setOrder} />
        </div>
      )}
      {rows.length === 0 && <p>Nobody here has “{named}” in the name.</p>}
      <DataTable
        label="Lifters"
        columns={columns}
        rows={rows}
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
        whole log, and the range that holds it 80 times in 100. Unmarked: the heaviest straight lift written
        down. <span className="with-keys">Arrows move, letters find a name, Enter opens.</span>
      </p>
    </div>
  );
}

/** So many are seen without looking for. */
const fewLifters = 10;

const orderWords = [
  { value: 'name', word: 'name' },
  { value: 'mass', word: 'body mass' },
  ...liftWords,
] as const;

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
    </>
  );
}

function heightsWord(count: number): string {
  if (count === 0) return 'estimated';
  return count === 1 ? '1 measured' : `${count} measured`;
}
