import { useState } from 'react';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { fromSi } from '#core/units/units.ts';
import { useClub } from '#web/api/useClub.ts';
import type { TimeScene } from '#web/charts/TimeScene.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { repsWords, setupWords } from '#web/setup/setWords.ts';
import { straightWords, surpriseWords } from './setWords.ts';

type Observation = StrengthEstimate['observations'][number];
type Point = TimeScene['history'][number];

/** How many lines are shown before the rest is asked for. */
const shownAtFirst = 30;

/** The picture of strength over time as two tables, for those who read rather than look; made when opened. */
export function TimeTables(props: {
  scene: TimeScene;
  observations: readonly Observation[];
  setsById: ReadonlyMap<string, LoggedSet>;
}) {
  const [open, setOpen] = useState(false);
  return (
    <details className="screen-only" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The same as tables</summary>
      {open && (
        <div className="stack">
          <CourseTable history={props.scene.history} />
          <SetsTable {...props} />
        </div>
      )}
    </details>
  );
}

function CourseTable({ history }: { history: readonly Point[] }) {
  const units = useUnits();
  const [all, setAll] = useState(false);
  const newest = history.toReversed();
  const whole = (kg: number) => Math.round(fromSi(kg, units.mass));
  const columns: Column<Point>[] = [
    { key: 'on', head: 'Week of', cell: ({ on }) => dateText(on) },
    { key: 'median', head: `Middle, ${units.mass}`, numeric: true, cell: ({ median }) => whole(median) },
    {
      key: '80',
      head: '80 % range',
      numeric: true,
      cell: ({ low80, high80 }) => `${whole(low80)} to ${whole(high80)}`,
    },
    {
      key: '95',
      head: '95 % range',
      numeric: true,
      cell: ({ low95, high95 }) => `${whole(low95)} to ${whole(high95)}`,
    },
  ];
  return (
    <>
      <DataTable
        label="Strength by week"
        columns={columns}
        rows={all ? newest : newest.slice(0, shownAtFirst)}
        keyOf={({ on }) => on}
        nameOf={({ on }) => dateText(on)}
      />
      {newest.length > shownAtFirst && (
        <MoreButton all={all} count={newest.length} word="weeks" onChange={setAll} />
      )}
    </>
  );
}

function SetsTable(props: Parameters<typeof TimeTables>[0]) {
  const { scene, observations, setsById } = props;
  const club = useClub();
  const units = useUnits();
  const [all, setAll] = useState(false);
  const shown = new Set(scene.marks.map(({ key }) => key));
  const rows = observations
    .flatMap((observation) => {
      const set = setsById.get(observation.setId);
      return set && shown.has(observation.setId) ? [{ observation, set }] : [];
    })
    .toReversed();
  const columns: Column<(typeof rows)[number]>[] = [
    { key: 'on', head: 'Date', cell: ({ set }) => dateText(set.doneOn) },
    { key: 'set', head: 'Set', cell: ({ set }) => repsWords(set, units) },
    { key: 'setup', head: 'Setup', wideOnly: true, cell: ({ set }) => setupWords(club, set, units) },
    {
      key: 'straight',
      head: 'Stands for, straight',
      cell: ({ observation }) => straightWords(observation, units),
    },
    {
      key: 'surprise',
      head: 'Against what was known',
      wideOnly: true,
      cell: ({ observation }) => surpriseWords(observation),
    },
  ];
  return (
    <>
      <DataTable
        label="Sets in the picture"
        columns={columns}
        rows={all ? rows : rows.slice(0, shownAtFirst)}
        keyOf={({ set }) => set.id}
        nameOf={({ set }) => dateText(set.doneOn)}
      />
      {rows.length > shownAtFirst && (
        <MoreButton all={all} count={rows.length} word="sets" onChange={setAll} />
      )}
    </>
  );
}

function MoreButton(props: { all: boolean; count: number; word: string; onChange: (all: boolean) => void }) {
  const { all, count, word, onChange } = props;
  return (
    <div>
      <button type="button" className="plain" onClick={() => onChange(!all)}>
        {all ? 'Show the newest only' : `Show all ${count} ${word}`}
      </button>
    </div>
  );
}
