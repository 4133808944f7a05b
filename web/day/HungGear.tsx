import { hangsFor } from '#contract/day/hangsFor.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { lifterName } from './lifterName.ts';
import type { Seat } from './Seat.ts';
import { solvedSetup } from './solvedSetup.ts';

/** What hangs on this bar, who else lifts with it, and the way to take it out of service at once. */
export function HungGear({ seat: { group, place, solving } }: { seat: Seat }) {
  const records = useClub();
  const today = localToday(useClubSettings().timeZone);
  const bands = useRecords('bandPair');
  const chains = useRecords('chainPair');
  const plan = solving.prescription?.document ?? null;
  const set = solvedSetup(solving.prescription, group.id, place.lifterId);
  if (!plan || !set) return null;
  const whom = (pairId: string) => hangsFor(plan, pairId).map((id) => lifterName(records.lifter, id));
  const hung = [
    ...set.bands.flatMap(({ bandPairId }) => {
      const pair = records.bandPair.find(({ id }) => id === bandPairId);
      if (pair === undefined || pair.retiredOn !== null) return [];
      const takeOut = () =>
        void bands.update({ ...pair, retiredOn: today }, pair.label, pair).catch(() => {});
      return [{ id: pair.id, label: pair.label, takeOut }];
    }),
    ...set.chains.flatMap(({ chainPairId }) => {
      const pair = records.chainPair.find(({ id }) => id === chainPairId);
      if (pair === undefined || pair.pairs === 0) return [];
      const takeOut = () =>
        void chains
          .update({ ...pair, pairs: pair.pairs - 1 }, `${pair.label}, one pair fewer`, pair)
          .catch(() => {});
      return [{ id: pair.id, label: `one pair of chain ${pair.label}`, takeOut }];
    }),
  ];
  if (hung.length === 0) return null;
  return (
    <div className="stack tight ruled screen-only">
      <h4>Worn or broken?</h4>
      <ul className="hung-gear">
        {hung.map(({ id, label, takeOut }) => (
          <li key={id} className="row">
            <button type="button" onClick={takeOut}>
              Take {label} out of service
            </button>
            <span className="small quiet">By this plan it hangs for {whom(id).join(', ')}.</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
