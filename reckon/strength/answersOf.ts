import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { Equipment, Lift } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { askedBelief } from '#core/strength/askDraws.ts';
import { type Belief, beliefOf, beliefOfMixture, normalBelief } from '#core/strength/belief.ts';
import { drawsOf } from '#core/strength/drawsOf.ts';
import type { StrengthPosterior } from '#core/strength/estimateStrength.ts';
import { asTold } from '#core/strength/modelError.ts';
import { openDraws } from '#core/strength/openDraws.ts';
import { type Prior, parameterNames } from '#core/strength/parameters.ts';
import { bodyMassOf, type CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';

/** Answers that travel to the screens. */
const DRAWS = 120;

/** Straight weight: kg on the bar that a total of this ln mass leaves on a day. */
export type BarKg = (lnTotal: number, day: number) => number;

export function barKgOf(records: CapabilityRecords, lifterId: string, lift: Lift): BarKg {
  const { movedBodyShare } = populationShape(lift);
  const movedOn = (day: number) => movedBodyShare * bodyMassOf(records, lifterId, dateOfDay(day)).massKg;
  return (lnTotal, day) => Math.max(0, Math.exp(lnTotal) - movedOn(day));
}

/** What is believed on the day `on` itself, of strength and of every parameter. */
export function answersOf(
  posterior: StrengthPosterior,
  on: string,
  barKg: BarKg,
): Pick<StrengthEstimate, 'on' | 'maxKg' | 'inEquipment' | 'parameters' | 'draws'> {
  const { prior } = posterior;
  const onDay = dayNumber(on);
  const straightKg = (lnTotal: number) => barKg(lnTotal, onDay);
  const told = asTold(posterior);
  const draws = openDraws(drawsOf(told, DRAWS), posterior.active, prior);
  return {
    on,
    maxKg: beliefOfMixture(told, straightKg),
    inEquipment: equipmentOf(posterior).map((equipment) => ({
      equipment,
      maxKg: askedBelief(draws, equipment, straightKg),
    })),
    parameters: parametersOf(posterior, prior),
    draws: draws.map((draw) => ({ ...draw })),
  };
}

/** The straight lift's maximum on a day, raw. */
export function maxKgOn(posterior: StrengthPosterior, on: string, barKg: BarKg): Belief {
  const onDay = dayNumber(on);
  return beliefOfMixture(asTold(posterior), (lnTotal) => barKg(lnTotal, onDay));
}

function equipmentOf({ sessions }: StrengthPosterior): Equipment[] {
  const names = { wraps: 'wraps', singlePly: 'single-ply', multiPly: 'multi-ply' } as const;
  const used = new Set(sessions.flatMap(({ groups }) => groups.map(({ equipment }) => equipment)));
  return Object.entries(names).flatMap(([name, equipment]) =>
    used.has(name as keyof typeof names) ? [equipment] : [],
  );
}

function parametersOf(posterior: StrengthPosterior, prior: Prior): StrengthEstimate['parameters'] {
  const draws = drawsOf(posterior.particles, 400);
  return parameterNames
    .filter((name) => posterior.active.includes(name))
    .map((name) => ({
      name,
      now: beliefOf(draws.map((draw) => draw[name])),
      before: normalBelief(prior.mean[name], prior.sd[name]),
    }));
}
