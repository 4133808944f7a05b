import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { nearestSetups } from '#reckon/log/nearestSetups.ts';
import { type MadeLift, recordsBySetup, type SetupRecord } from '#reckon/log/recordsBySetup.ts';
import { useClub } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { type Units, useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterRecords } from './lifterRecords.ts';
import { overWeeksAddress } from './partAddress.ts';
import { setupNames } from './setupNames.ts';
import { isDoubted, straightWords } from './strength/setWords.ts';

/** How many setups are shown before the rest is asked for, and how many neighbours of one. */
const shownAtFirst = 8;
const neighbours = 4;

interface Row extends SetupRecord {
  /** The setup in words. */
  name: string;
  /** What the record stands for in straight weight; null: no estimate knows it. */
  observation: StrengthEstimate['observations'][number] | null;
}

/** Personal records, each only ever against the same setup; an opened one beside its nearest setups. */
export function RecordsBySetup(props: {
  own: LifterRecords;
  sets: readonly LoggedSet[];
  estimates: readonly StrengthEstimate[];
}) {
  const { own, sets, estimates } = props;
  const club = useClub();
  const { mass, length } = useUnits();
  const [all, setAll] = useState(false);
  const [openedId, setOpenedId] = useInAddress('record');
  const rows = useMemo(() => {
    const observed = new Map(
      estimates.flatMap(({ observations }) => observations.map((one) => [one.setId, one] as const)),
    );
    const records = recordsBySetup(sets, own.best);
    const names = setupNames(
      club,
      records.map(({ newest }) => newest),
      { mass, length },
    );
    return records.map(
      (record, i): Row => ({
        ...record,
        name: names[i]!,
        observation: observed.get(record.newest.id) ?? null,
      }),
    );
  }, [club, sets, own.best, estimates, mass, length]);
  const opened = rows.find(({ newest }) => newest.id === openedId);
  const columns = columnsIn({ mass, length });
  return (
    <>
      <DataTable
        label="Records by setup"
        columns={columns}
        rows={all ? rows : rows.slice(0, shownAtFirst)}
        keyOf={({ key }) => key}
        nameOf={({ newest }) => liftWord(newest.lift)}
        onOpen={({ newest }) => setOpenedId(newest.id === openedId ? '' : newest.id)}
        selectedKey={opened?.key}
      />
      {rows.length > shownAtFirst && (
        <div>
          <button type="button" className="plain" onClick={() => setAll(!all)}>
            {all ? 'Show the newest only' : `Show all ${rows.length} setups`}
          </button>
        </div>
      )}
      {opened ? (
        <Nearest opened={opened} rows={rows} lifterId={own.lifter.id} />
      ) : (
        <p className="small quiet">
          A record counts against the same setup only.{' '}
          <span className="screen-only">
            Open one to see the setups most like it beside it, all as straight weight.
          </span>
        </p>
      )}
    </>
  );
}

/** The setups most like the opened one, with what their records stand for. */
function Nearest({ opened, rows, lifterId }: { opened: Row; rows: readonly Row[]; lifterId: string }) {
  const units = useUnits();
  const keyed = rows.map((row) => ({ ...row.newest, row }));
  const nearest = nearestSetups(opened.newest, keyed, neighbours).map(({ row }) => row);
  const name = `${liftWord(opened.newest.lift)}, ${opened.name}`;
  const columns: Column<Row>[] = [
    { key: 'setup', head: 'Setup', cell: ({ name }) => name },
    {
      key: 'record',
      head: 'Record',
      numeric: true,
      cell: ({ newest, observation }) => <RecordBar newest={newest} observation={observation} />,
    },
    { key: 'on', head: 'Date', wideOnly: true, cell: ({ newest }) => dateText(newest.doneOn) },
    {
      key: 'straight',
      head: 'Stands for, straight',
      numeric: true,
      cell: ({ observation }) => (observation ? straightWords(observation, units) : '–'),
    },
  ];
  return (
    <div className="stack tight">
      <div className="row ends">
        <h3>Nearest to {name}</h3>
        {opened.newest.from === 'log' && (
          <Link href={overWeeksAddress({ id: opened.newest.id, lifterId })} className="lifters-way">
            This setup over the weeks
          </Link>
        )}
      </div>
      {nearest.length === 0 ? (
        <p>No other setup of this lift has a record yet.</p>
      ) : (
        <DataTable
          label={`Nearest to ${name}`}
          columns={columns}
          rows={[opened, ...nearest]}
          keyOf={({ key }) => key}
          nameOf={(row) => row.name}
          selectedKey={opened.key}
        />
      )}
    </div>
  );
}

function columnsIn(units: Pick<Units, 'mass' | 'length'>): Column<Row>[] {
  return [
    {
      key: 'setup',
      head: 'Lift and setup',
      cell: ({ newest, name }) => `${liftWord(newest.lift)}, ${name}`,
    },
    {
      key: 'record',
      head: 'Record',
      numeric: true,
      cell: ({ newest, observation }) => <RecordBar newest={newest} observation={observation} />,
    },
    {
      key: 'on',
      head: 'Date',
      cell: ({ newest }) => (
        <>
          <span className="lifters-date">{dateText(newest.doneOn)}</span>
          {newest.platform && ', meet'}
        </>
      ),
    },
    {
      key: 'before',
      head: 'Before it',
      wideOnly: true,
      cell: ({ before }) =>
        before === null ? 'the first' : `${barText(before, units)}, ${dateText(before.doneOn)}`,
    },
    {
      key: 'straight',
      head: 'Stands for, straight',
      numeric: true,
      wideOnly: true,
      cell: ({ observation }) => (observation ? straightWords(observation, units) : '–'),
    },
  ];
}

/** A record that is hardly believed is most often a slip of the pen; it stays in sight until it is struck. */
function RecordBar({ newest, observation }: Pick<Row, 'newest' | 'observation'>) {
  const units = useUnits();
  return (
    <>
      {barText(newest, units)}
      {observation !== null && isDoubted(observation) && (
        <span className="small stop lifters-doubt">hard to believe</span>
      )}
    </>
  );
}

/** "140 kg", "140 kg × 3". */
function barText({ setup, reps }: MadeLift, { mass }: Pick<Units, 'mass'>): string {
  return `${oneDecimal(setup.barKg, mass)} ${mass}${reps === 1 ? '' : ` × ${reps}`}`;
}
