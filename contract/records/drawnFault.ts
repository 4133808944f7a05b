import { ageOn } from '#contract/calendar/ageOn.ts';
import { adultAge } from '#contract/calendar/isMinor.ts';
import type { ClubRecords, KindName, RecordOf } from './allKinds.ts';
import type { Comparison, TakenOut } from './comparison.ts';
import type { Fault } from './Fault.ts';
import type { Lifter } from './lifters.ts';
import { notOfAge } from './notOfAge.ts';

type LifterAge = Pick<Lifter, 'id' | 'name' | 'bornOn'>;

/**
 * What a record cannot be because of who was drawn for a comparison: nobody is who is a minor on its first day, or whose date of birth is
 * not known, whichever of the two records comes last; and only who was drawn can be taken out. `club` holds the kinds that are named here.
 */
export function drawnFault(
  kind: KindName,
  record: RecordOf<KindName>,
  club: Readonly<Partial<ClubRecords>>,
): Fault | null {
  if (kind === 'comparison') return drawnMinor(record as Comparison, club.lifter!);
  if (kind === 'lifter') return minorByBirth(record as Lifter, club.comparison!);
  return kind === 'takenOut' ? takenOutUndrawn(record as TakenOut, club.comparison!, club.lifter!) : null;
}

function drawnMinor(
  { planDocument: { drawn, startsOn } }: Comparison,
  lifters: readonly LifterAge[],
): Fault | null {
  for (const [i, { lifterId }] of drawn.entries()) {
    const lifter = lifters.find(({ id }) => id === lifterId);
    const why = lifter ? whyNotOfAge(lifter, startsOn) : null;
    if (why === null) continue;
    const field = `planDocument.drawn[${i}].lifterId`;
    return {
      field,
      message: `${field} is "${lifterId}"; ${lifter!.name} cannot be drawn: ${why}. Everybody drawn must be ${adultAge} or older on the first day, ${startsOn}.`,
      isClash: true,
    };
  }
  return null;
}

function minorByBirth(lifter: LifterAge, comparisons: readonly Comparison[]): Fault | null {
  for (const { title, planDocument } of comparisons) {
    if (!planDocument.drawn.some(({ lifterId }) => lifterId === lifter.id)) continue;
    const why = whyNotOfAge(lifter, planDocument.startsOn);
    if (why === null) continue;
    return {
      field: 'bornOn',
      message: `bornOn is ${lifter.bornOn === null ? 'empty' : `"${lifter.bornOn}"`}; ${lifter.name} was drawn for the comparison "${title}", and everybody drawn must be known to be ${adultAge} or older on its first day, ${planDocument.startsOn}. Remove that comparison first, and draw it anew without ${lifter.name}.`,
      isClash: true,
    };
  }
  return null;
}

function takenOutUndrawn(
  { comparisonId, lifterId }: TakenOut,
  comparisons: readonly Comparison[],
  lifters: readonly LifterAge[],
): Fault | null {
  const of = comparisons.find(({ id }) => id === comparisonId);
  if (!of || of.planDocument.drawn.some((one) => one.lifterId === lifterId)) return null;
  const name = lifters.find(({ id }) => id === lifterId)?.name ?? 'this lifter';
  return {
    field: 'lifterId',
    message: `lifterId is "${lifterId}"; ${name} was not drawn for the comparison "${of.title}", so nobody is to be taken out.`,
  };
}

function whyNotOfAge({ bornOn }: LifterAge, startsOn: string): string | null {
  if (notOfAge(bornOn, startsOn) === null) return null;
  return bornOn === null ? 'the date of birth is not known' : `${ageOn(bornOn, startsOn)} years old then`;
}
