import type { Lift } from '#contract/records/lift.ts';
import { liftWord, liftWords } from '#web/parts/liftWords.ts';

/** Which lifts the server still works out; what is there already stands below meanwhile. */
export function LiftsAwaited({ awaited }: { awaited: readonly Lift[] }) {
  if (awaited.length === 0) return null;
  return (
    <label className="small quiet lifters-progress lifters-awaited" aria-busy="true">
      <progress value={liftWords.length - awaited.length} max={liftWords.length} /> Working out from the log:{' '}
      {awaited.map(liftWord).join(', ')}
    </label>
  );
}
