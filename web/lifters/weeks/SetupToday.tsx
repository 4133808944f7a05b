import { useMemo } from 'react';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { fromSi } from '#core/units/units.ts';
import { useClub } from '#web/api/useClub.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { type AskedLifter, maxBarOf } from '../strength/askDraws.ts';
import { OfDraws } from '../strength/OfEstimate.tsx';
import { riggingAsked } from '../strength/riggingAsked.ts';

/** The heaviest bar of this setup today, by the whole log. */
export function SetupToday({ estimate, example }: { estimate: StrengthEstimate; example: LoggedSet }) {
  return (
    <OfDraws estimate={estimate}>
      {(lifter) => <Heaviest lifter={lifter} example={example} on={estimate.on} />}
    </OfDraws>
  );
}

function Heaviest(props: { lifter: AskedLifter; example: LoggedSet; on: string }) {
  const { lifter, example, on } = props;
  const { lifterId, lift, setup, equipment } = example;
  const club = useClub();
  const { mass } = useUnits();
  const rigging = useMemo(
    () => riggingAsked(club, { lifterId, lift, setup, on }),
    [club, lifterId, lift, setup, on],
  );
  const maxKg = useMemo(
    () => (typeof rigging === 'string' ? null : maxBarOf(lifter, rigging, equipment)),
    [lifter, rigging, equipment],
  );
  if (typeof rigging === 'string') return <p className="small quiet">{rigging}</p>;
  if (maxKg === null) return null;
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))}`;
  return (
    <dl className="lifters-facts">
      <div>
        <dt className="small quiet">heaviest bar in this setup today</dt>
        <dd>
          <Known
            value={whole(maxKg.median)}
            unit={mass}
            known="estimated"
            interval={`${whole(maxKg.low80)} to ${whole(maxKg.high80)}`}
            why="By the whole log, as it is in Any setup: the range holds the heaviest bar of an average rested day 80 % of the time. Not an order: no maximum without warm-up, spotters and the coach's word."
            size="lead"
          />
        </dd>
      </div>
    </dl>
  );
}
