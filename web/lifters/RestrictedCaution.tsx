import { holdsOn } from '#contract/records/holdsOn.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import type { LifterRecords } from './lifterRecords.ts';

/** Stands where this lifter's loads are worked out. */
export function RestrictedCaution({ own, today }: { own: LifterRecords; today: string }) {
  const lifts = own.restrictions.filter((one) => holdsOn(one, today)).map(({ lift }) => liftWord(lift));
  if (lifts.length === 0) return null;
  return (
    <p className="caution">
      <strong>Restricted.</strong> Days hold this lifter to less in the{' '}
      {[...new Set(lifts)].join(' and the ')}; what is tried out here is not held to it.{' '}
      <a href="#restrictions">See below.</a>
    </p>
  );
}
