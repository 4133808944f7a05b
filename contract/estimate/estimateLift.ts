import { bodyMassOf, type CapabilityRecords } from '#contract/assemble/assembleCapability.ts';
import type { Equipment, Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { askedBelief } from '#core/strength/askDraws.ts';
import { beliefOf, beliefOfMixture, normalBelief } from '#core/strength/belief.ts';
import { drawsOf } from '#core/strength/drawsOf.ts';
import { estimateStrength, type StrengthPosterior } from '#core/strength/estimateStrength.ts';
import { openDraws } from '#core/strength/openDraws.ts';
import { type Prior, parameterNames } from '#core/strength/parameters.ts';
import { risesOf } from '#core/strength/stall.ts';
import { straightTotalsOf } from '#core/strength/straightTotals.ts';
import { strengthCourses } from '#core/strength/strengthCourses.ts';
import { strengthHistory } from '#core/strength/strengthHistory.ts';
import { dateOfDay, dayNumber } from './dayNumber.ts';
import { evidenceOf } from './evidenceOf.ts';
import { competitionSetup, riggingOf } from './riggingOf.ts';

/** Windows over which a rise is asked for. */
const RISE_WEEKS = [4, 8, 12, 16, 26];
/** Answers that travel to the screens. */
const DRAWS = 120;

/** Everything that a lifter's log says of one lift up to the day `on`; null where it says nothing. */
export function estimateLift(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  { lifterId, lift, on }: { lifterId: string; lift: Lift; on: string },
  prior: Prior,
): StrengthEstimate | null {
  const evidence = evidenceOf(records, log, lifterId, lift, on);
  if (evidence.sets.length === 0) return null;
  const body = bodyMassOf(records, lifterId, on);
  const onDay = dayNumber(on);
  const posterior = estimateStrength({
    lift,
    reference: riggingOf(records, lifterId, lift, competitionSetup(lift), on),
    bodyMassKg: body.massKg,
    sets: evidence.sets,
    onDay,
    prior,
  });
  const { movedBodyShare } = populationShape(lift);
  const movedOn = (day: number) => movedBodyShare * bodyMassOf(records, lifterId, dateOfDay(day)).massKg;
  const barKg = (lnTotal: number, day: number) => Math.max(0, Math.exp(lnTotal) - movedOn(day));
  const maxKg = beliefOfMixture(posterior.particles, (lnTotal) => barKg(lnTotal, onDay));
  const draws = openDraws(drawsOf(posterior, DRAWS), posterior.active, prior);
  const history = strengthHistory(posterior, barKg).map(({ day, belief }) => ({
    on: dateOfDay(day),
    ...belief,
  }));
  return {
    lifterId,
    lift,
    on,
    setCount: evidence.sets.length,
    lastSetOn: dateOfDay(evidence.sets.at(-1)!.day),
    bodyMassKg: body.massKg,
    bodyMassKnown: body.known,
    maxKg,
    inEquipment: equipmentOf(posterior).map((equipment) => ({
      equipment,
      maxKg: askedBelief(draws, equipment, (lnTotal) => barKg(lnTotal, onDay)),
    })),
    parameters: parametersOf(posterior, prior),
    history: history.at(-1)?.on === on ? history : [...history, { on, ...maxKg }],
    rise: risesOf(strengthCourses(posterior, onDay, RISE_WEEKS.at(-1)!), RISE_WEEKS),
    observations: observationsOf(posterior, evidence, barKg),
    leftOut: [
      ...evidence.leftOut,
      ...posterior.leftOut.map((i) => ({
        id: evidence.ids[i]!,
        reason: 'No strength makes this lift as it is written down: look at its heights and its bar.',
      })),
    ],
    draws: draws.map((draw) => ({ ...draw })),
  };
}

function equipmentOf({ sessions }: StrengthPosterior): Equipment[] {
  const names = { wraps: 'wraps', singlePly: 'single-ply', multiPly: 'multi-ply' } as const;
  const used = new Set(sessions.flatMap(({ groups }) => groups.map(({ equipment }) => equipment)));
  return Object.entries(names).flatMap(([name, equipment]) =>
    used.has(name as keyof typeof names) ? [equipment] : [],
  );
}

function parametersOf(posterior: StrengthPosterior, prior: Prior): StrengthEstimate['parameters'] {
  const draws = drawsOf(posterior, 400);
  return parameterNames
    .filter((name) => posterior.active.includes(name))
    .map((name) => ({
      name,
      now: beliefOf(draws.map((draw) => draw[name])),
      before: normalBelief(prior.mean[name], prior.sd[name]),
    }));
}

function observationsOf(
  posterior: StrengthPosterior,
  { sets, ids }: { sets: readonly { day: number }[]; ids: readonly string[] },
  barKg: (lnTotal: number, day: number) => number,
): StrengthEstimate['observations'] {
  const straight = straightTotalsOf(posterior);
  return posterior.surprises
    .toSorted((a, b) => a.set - b.set)
    .map(({ set, surprise, movedLn }) => {
      const { day } = sets[set]!;
      const { lnTotal, says } = straight[set]!;
      const straightKg = barKg(lnTotal, day);
      return {
        setId: ids[set]!,
        on: dateOfDay(day),
        says,
        straightKg,
        surprise,
        movedKg: barKg(lnTotal + movedLn, day) - straightKg,
      };
    });
}
