import { useMemo, useState } from 'react';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { useClub } from '#web/api/useClub.ts';
import { StrengthTime } from '#web/charts/StrengthTime.tsx';
import { TimeLegend } from '#web/charts/TimeLegend.tsx';
import { sceneFrom } from '#web/charts/TimeScene.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterRecords } from '../lifterRecords.ts';
import { ChosenSet } from './ChosenSet.tsx';
import { LeftOut } from './LeftOut.tsx';
import { SlippedSets } from './SlippedSets.tsx';
import { StallNote } from './StallNote.tsx';
import { setsById, strengthScene } from './strengthScene.ts';
import { TimeTables } from './TimeTables.tsx';
import { TodayNumbers } from './TodayNumbers.tsx';

/** Spans of time that one can look at, by their days; all: from the first set. */
const spans = [
  { value: 'all', word: 'all', days: null },
  { value: 'year', word: 'a year', days: 365 },
  { value: 'weeks', word: '12 weeks', days: 84 },
] as const;

/** Strength in one lift: today's number, its course with every set that tells of it, and a stall where there is one. */
export function StrengthSection(props: {
  own: LifterRecords;
  estimate: StrengthEstimate;
  sets: readonly LoggedSet[];
}) {
  const { own, estimate, sets } = props;
  const club = useClub();
  const { mass, length } = useUnits();
  const [span, setSpan] = useInAddress('time', 'all');
  const [chosenKey, setChosenKey] = useState<string | null>(null);
  const whole = useMemo(
    () => strengthScene(club, own, estimate, sets, { mass, length }),
    [club, own, estimate, sets, mass, length],
  );
  const { value: shownSpan, days } = spans.find(({ value }) => value === span) ?? spans[0];
  const scene = useMemo(
    () => sceneFrom(whole, days === null ? null : daysBefore(estimate.on, days)),
    [whole, days, estimate.on],
  );
  const byId = useMemo(() => setsById(own, sets), [own, sets]);
  const chosen = estimate.observations.find(({ setId }) => setId === chosenKey);
  return (
    <div className="stack strength">
      <TodayNumbers estimate={estimate} />
      <SlippedSets
        lift={estimate.lift}
        slips={estimate.slips}
        setsById={byId}
        bestIds={new Set(own.best.map(({ id }) => id))}
      />
      <StallNote estimate={estimate} sets={sets} />
      <div className="row ends">
        <h3>Strength over time</h3>
        <Choice label="Time shown" options={spans} value={shownSpan} onChange={setSpan} />
      </div>
      <TimeLegend />
      <MeasuredWidth>
        {(widthPx) => (
          <StrengthTime
            scene={scene}
            mass={mass}
            widthPx={widthPx}
            chosenKey={chosenKey}
            onChoose={setChosenKey}
          />
        )}
      </MeasuredWidth>
      <ChosenSet observation={chosen} set={chosenKey === null ? undefined : byId.get(chosenKey)} />
      <TimeTables scene={scene} observations={estimate.observations} setsById={byId} />
      <LeftOut leftOut={estimate.leftOut} setsById={byId} />
    </div>
  );
}

function daysBefore(on: string, days: number): string {
  return new Date(Date.parse(on) - days * 86_400_000).toISOString().slice(0, 10);
}
