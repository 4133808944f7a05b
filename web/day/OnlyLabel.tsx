import type { Place } from '#contract/records/day.ts';
import { useClub } from '#web/api/useClub.ts';
import { useLabel } from '#web/parts/useLabel.ts';

/** Says that the racks show only those with a label, as the address asks, how many that leaves out, and the way back. */
export function OnlyLabel({ places }: { places: readonly Place[] }) {
  const { lifter } = useClub();
  const { label, setLabel, isShown } = useLabel(lifter);
  if (label === '') return null;
  const shown = places.filter(({ lifterId }) => lifter.some((one) => one.id === lifterId && isShown(one)));
  return (
    <p className="row base small">
      Only {label}: {shown.length} of {places.length} shown. Bars and cautions count everybody.
      <button type="button" className="plain" onClick={() => setLabel('')}>
        Show everybody
      </button>
    </p>
  );
}
