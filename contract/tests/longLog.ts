import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { type Parameters, populationPrior } from '#core/strength/parameters.ts';

/** What a long log comes to that shows a maximum in the squat and is told as most lifters' but for some parameters. */
export function longLog(
  { bodyMass }: ClubRecords,
  lifterId: string,
  maxKg: number,
  own: Partial<Parameters> = {},
): StrengthEstimate {
  const bodyMassKg = bodyMass.find((mass) => mass.lifterId === lifterId)!.massKg;
  const maximum = { median: maxKg, low80: 0.98 * maxKg, high80: 1.02 * maxKg, low95: maxKg, high95: maxKg };
  return {
    lifterId,
    lift: 'squat',
    on: '2026-03-01',
    setCount: 40,
    takenIn: 0,
    lastSetOn: '2026-02-27',
    bodyMassKg,
    bodyMassKnown: 'measured',
    maxKg: maximum,
    inEquipment: [],
    parameters: [],
    history: [],
    rise: [],
    observations: [],
    slips: [],
    leftOut: [],
    draws: [-0.01, 0, 0.01].map((ln) => ({
      ...populationPrior('squat').mean,
      ...own,
      lnTotal: Math.log(maxKg + 0.88 * bodyMassKg) + ln,
    })),
  };
}
