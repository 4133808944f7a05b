import { useState } from 'react';
import { startOf } from '#contract/day/startOf.ts';
import type { Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { HandSettings } from './HandSettings.tsx';
import { LifterPicture } from './LifterPicture.tsx';
import { placeGrips } from './placeGrips.ts';
import type { Seat } from './Seat.ts';
import { type OnBar, solvedSetup, solvedStrength } from './solvedSetup.ts';

/** What is on the bar, as fields and as the picture that follows them; kept only when the coach says so. */
export function PlaceTrial(props: {
  seat: Seat;
  onFix: (byCoach: Place['byCoach']) => void;
  onStart: (start: Start) => void;
}) {
  const { seat } = props;
  const { group, place, name, gravityMps2 } = seat;
  const { prescription } = seat.solving;
  const records = useClub();
  const units = useUnits();
  const solved = solvedSetup(prescription, group.id, place.lifterId);
  const kept: OnBar = {
    barKg: place.byCoach?.barKg ?? solved?.barKg ?? firstBarKg,
    bands: place.byCoach?.bands ?? solved?.bands ?? [],
    chains: place.byCoach?.chains ?? solved?.chains ?? [],
  };
  const [onBar, setOnBar] = useState(kept);
  // While the box is held its height is only looked at; the day gets it when it is let go.
  const [heldBoxM, setHeldBoxM] = useState<number | null>(null);
  const keptStart = startOf(group, place);
  const start: Start = heldBoxM === null ? keptStart : { way: 'box', heightM: heldBoxM };
  const grips = placeGrips({
    name,
    start,
    onBar,
    keptKg: kept.barKg,
    units,
    boxes: records.box,
    gravityMps2,
    onBarKg: (barKg) => setOnBar({ ...onBar, barKg }),
    onBoxM: setHeldBoxM,
    onBoxLetGo: (heightM) => {
      setHeldBoxM(null);
      props.onStart({ way: 'box', heightM });
    },
  });
  return (
    <>
      <div className="detail-picture">
        <LifterPicture
          {...{ seat, onBar, start, grips }}
          strength={solvedStrength(prescription, group.id, place.lifterId, start)}
        />
      </div>
      <HandSettings {...{ seat, kept, onBar }} onTry={setOnBar} onFix={props.onFix} />
    </>
  );
}

/** Before anything was worked out: a light bar to begin from. */
const firstBarKg = 60;
