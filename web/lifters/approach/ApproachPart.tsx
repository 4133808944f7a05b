import { useMemo } from 'react';
import { equipmentWord, liftWords } from '#contract/words/liftWords.ts';
import { approachesOf } from '#reckon/season/approaches.ts';
import { classesAhead } from '#reckon/season/classesAhead.ts';
import { useClub } from '#web/api/useClub.ts';
import { useProjection } from '#web/api/useProjection.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { ClassLines } from '#web/setup/ClassLines.tsx';
import type { InPart } from '../LifterView.ts';
import { MinorCaution } from '../MinorCaution.tsx';
import { setupNames } from '../setupNames.ts';
import { ApproachOfSetup } from './ApproachOfSetup.tsx';

/** How approaches with bands came out on the platform, and what the one under way foretells, with the projection beside it. */
export function ApproachPart({ id, own, today, sets, hasSets, hasEstimates }: InPart) {
  const club = useClub();
  const units = useUnits();
  const { lifter, best } = own;
  const [asked, setLift] = useInAddress('lift', 'squat');
  const lift = liftWords.find(({ value }) => value === asked)?.value ?? 'squat';
  const approaches = useMemo(
    () => approachesOf(club, sets, best, { lift, today }),
    [club, sets, best, lift, today],
  );
  const names = setupNames(
    club,
    approaches.map(({ cases, now }) => (now ?? cases[0]!).lift),
    units,
  );
  const entered = club.seasonEntry.filter(({ lifterId }) => lifterId === lifter.id);
  const next = club.meet
    .filter(({ id, date }) => date > today && entered.some(({ meetIds }) => meetIds.includes(id)))
    .toSorted((a, b) => a.date.localeCompare(b.date))[0];
  const { data } = useProjection(
    { lifterId: lifter.id, on: next?.date ?? today, equipment: lifter.equipment, taperPercent: '0' },
    next !== undefined && hasEstimates,
  );
  return (
    <section id={id} className="stack ruled" aria-labelledby="approach-title">
      <div className="row ends">
        <h2 id="approach-title">Into the meet, with bands</h2>
        <Choice label="Lift" options={liftWords} value={lift} onChange={setLift} />
      </div>
      <MinorCaution lifter={lifter} today={next?.date ?? today} />
      <ClassLines ahead={classesAhead(club, entered, today).filter(({ meetId }) => meetId === next?.id)} />
      {!hasSets ? (
        <p>Fetching the log.</p>
      ) : approaches.length === 0 ? (
        <p>
          No hard lift with bands in the six weeks before a meet or before today. Log heavy singles with
          bands, and what the platform gave after them stands here.
        </p>
      ) : (
        approaches.map((one, at) => (
          <ApproachOfSetup
            key={one.key}
            name={names[at]!}
            approaches={one}
            meet={next}
            projected={data?.find((projection) => projection.lift === lift)}
          />
        ))
      )}
      <p className="small quiet">
        Only meets in the same equipment ({equipmentWord(lifter.equipment)} now) and the heaviest hard lift of
        the six weeks before each; the last three days do not count. Loads are bar, bands and chains at
        lockout.
      </p>
    </section>
  );
}
