import { ageOn } from '#contract/calendar/ageOn.ts';
import { isMinor } from '#contract/calendar/isMinor.ts';
import type { Lifter } from '#contract/records/lifters.ts';

/** Stands where a minor's loads are worked out. */
export function MinorCaution({ lifter, today }: { lifter: Lifter; today: string }) {
  const { bornOn } = lifter;
  if (bornOn === null || !isMinor(bornOn, today)) return null;
  return (
    <p className="caution">
      <strong>{ageOn(bornOn, today)} years old.</strong> Maximal work and bands are for a qualified coach to
      decide, with the consent of parents or guardians and the rules of your federation and country.
    </p>
  );
}
