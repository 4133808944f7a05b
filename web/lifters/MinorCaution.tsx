import type { Lifter } from '#contract/records/lifters.ts';
import { ageOn, isMinor } from './age.ts';

/** Stands where a minor's loads are worked out. */
export function MinorCaution({ lifter, today }: { lifter: Lifter; today: string }) {
  if (!isMinor(lifter.bornOn, today)) return null;
  return (
    <p className="caution">
      <strong>{ageOn(lifter.bornOn, today)} years old.</strong> Maximal work and bands are for a qualified
      coach to decide, with the consent of parents or guardians and the rules of your federation and country.
    </p>
  );
}
