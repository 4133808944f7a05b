import type { ClubRecords } from '#contract/records/allKinds.ts';

const MS_PER_DAY = 86_400_000;

/** Days from today, negative in the past. */
export function dayOf(date: string, today: string): number {
  return Math.round((Date.parse(date) - Date.parse(today)) / MS_PER_DAY);
}

/** Body mass of an invented lifter on any day: straight between weighings (kg). */
export function trueBody(records: ClubRecords, lifterId: string, today: string): (day: number) => number {
  const weighings = records.bodyMass
    .filter((mass) => mass.lifterId === lifterId)
    .map(({ takenOn, massKg }) => ({ day: dayOf(takenOn, today), massKg }))
    .sort((a, b) => a.day - b.day);
  return (day) => {
    const next = weighings.findIndex((one) => one.day >= day);
    if (next === -1) return weighings.at(-1)!.massKg;
    if (next === 0) return weighings[0]!.massKg;
    const [before, after] = [weighings[next - 1]!, weighings[next]!];
    const share = (day - before.day) / (after.day - before.day);
    return before.massKg + share * (after.massKg - before.massKg);
  };
}
