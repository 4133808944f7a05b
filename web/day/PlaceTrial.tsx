import { isSameStart } from '#contract/day/isSameStart.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { Place } from '#contract/records/day.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { HandSettings } from './HandSettings.tsx';
import { LifterPicture } from './LifterPicture.tsx';
import { placeGrips } from './placeGrips.ts';
import type { Seat } from './Seat.ts';
import { type OnBar, solvedSetup, solvedStrength } from './solvedSetup.ts';
import { setTried, type Tried, triedKey, useTried } from './tried.ts';

/** What is on the bar, as fields and as the picture that follows them; kept only when the coach says so. */
export function PlaceTrial(props: { seat: Seat; onFix: (fixed: Pick<Place, 'byCoach' | 'start'>) => void }) {
  const { seat } = props;
  const { day, group, place, name, gravityMps2 } = seat;
  const { prescription } = seat.solving;
  const records = useClub();
  const units = useUnits();
  const solved = solvedSetup(prescription, group.id, place.lifterId);
  const kept: OnBar = {
    barKg: place.byCoach?.barKg ?? solved?.barKg ?? firstBarKg,
    bands: place.byCoach?.bands ?? solved?.bands ?? [],
    chains: place.byCoach?.chains ?? solved?.chains ?? [],
  };
  const key = triedKey(day.id, group.id, place.lifterId);
  const tried = useTried(key);
  const onBar = tried?.onBar ?? kept;
  const keptStart = startOf(group, place);
  const start = tried?.start ?? keptStart;
  const turnTo = (turned: Partial<Tried>) => {
    const next = { onBar, start: tried?.start ?? null, ...turned };
    const otherStart = next.start !== null && !isSameStart(next.start, keptStart, sameStopM);
    const isKept = !otherStart && JSON.stringify(next.onBar) === JSON.stringify(kept);
    setTried(key, isKept ? null : { ...next, start: otherStart ? next.start : null });
  };
  const keep = (byCoach: Place['byCoach']) => {
    const own = isSameStart(start, group.start, sameStopM) ? null : start;
    setTried(key, null);
    props.onFix({ byCoach, start: tried?.start ? own : place.start });
  };
  const grips = placeGrips({
    name,
    start,
    onBar,
    keptKg: kept.barKg,
    units,
    boxes: records.box,
    gravityMps2,
    onBarKg: (barKg) => turnTo({ onBar: { ...onBar, barKg } }),
    onBoxM: (heightM) => turnTo({ start: { way: 'box', heightM } }),
  });
  return (
    <>
      <div className="detail-picture">
        <LifterPicture
          {...{ seat, onBar, start, grips }}
          strength={solvedStrength(prescription, group.id, place.lifterId, start)}
        />
      </div>
      <HandSettings
        {...{ seat, kept, onBar }}
        triedStart={tried?.start ?? null}
        onTry={(next) => turnTo({ onBar: next })}
        onKeep={keep}
        onLetGo={() => setTried(key, null)}
      />
    </>
  );
}

/** Before anything was worked out: a light bar to begin from. */
const firstBarKg = 60;

/** A grip stops at heights that differ by more. */
const sameStopM = 1e-6;
