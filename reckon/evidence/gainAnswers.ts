import type { EvidenceAnswer, EvidenceLine, Variant } from '#contract/evidence/evidenceReport.ts';
import { lift } from '#contract/records/lift.ts';
import { gainNoise } from '#core/evidence/gainNoise.ts';
import { type GainSlope, gainSlope, slopesByEquipment } from '#core/evidence/gainSlope.ts';
import type { LiftNoise } from '#core/evidence/liftNoise.ts';
import { bareLine, emptyLine, rangeOf } from './evidenceLines.ts';
import type { GymGain } from './gymGains.ts';
import { regressionToTheMean, tooFewMeets } from './trapsOf.ts';

type Traps = EvidenceAnswer['traps'];

/** How much of a gym gain reached the platform: the club, each lift, each lifter. */
export function carryOver(gains: readonly GymGain[], noise: LiftNoise, about: Traps): EvidenceAnswer {
  const slope = gainSlope(gains, gainNoise(gains, noise));
  const byLift = lift.options.flatMap((name) => {
    const own = gains.filter(({ step }) => step.before.lift === name);
    const found = gainSlope(own, gainNoise(own, noise));
    return own.length === 0 ? [] : [{ ...clubLine(own, found), lift: name }];
  });
  return {
    question: 'carryOver',
    lines: [clubLine(gains, slope), ...byLift, ...lifterLines(slope)],
    traps: [regressionToTheMean(noise, slope?.reliability ?? null), tooFewMeets(gains), ...about],
  };
}

/** What each assistance variant's gain foretold, the one with most gains first. */
export function variantAnswer(
  variants: readonly { variant: Variant; gains: readonly GymGain[] }[],
  noise: LiftNoise,
  about: Traps,
): EvidenceAnswer {
  return {
    question: 'variants',
    lines: variants
      .toSorted((a, b) => b.gains.length - a.gains.length)
      .flatMap(({ variant, gains }) => variantLines(variant, gains, noise)),
    traps: [
      regressionToTheMean(noise, null),
      { code: 'manyVariants', looked: variants.filter(({ gains }) => gains.length > 0).length },
      ...about,
    ],
  };
}

/** Raw beside equipped; the club's line is equipped less raw. */
export function equipped(gains: readonly GymGain[], noise: LiftNoise, about: Traps): EvidenceAnswer {
  const slopes = slopesByEquipment(gains, gainNoise(gains, noise));
  const side = (isEquipped: boolean): EvidenceLine => {
    const own = gains.filter((gain) => gain.equipped === isEquipped);
    const found = slopes?.[isEquipped ? 'equipped' : 'raw'];
    return {
      ...bareLine(own),
      equipped: isEquipped,
      effect: found ? rangeOf(found.adjusted ?? found.naive) : null,
      naive: found ? rangeOf(found.naive) : null,
    };
  };
  const both = slopes?.difference;
  return {
    question: 'equipped',
    lines: [
      {
        ...bareLine(gains),
        effect: both ? rangeOf(both.adjusted ?? both.naive) : null,
        naive: both ? rangeOf(both.naive) : null,
      },
      side(false),
      side(true),
    ],
    traps: [regressionToTheMean(noise, null), { code: 'notByLot' }, ...about],
  };
}

function variantLines(variant: Variant, gains: readonly GymGain[], noise: LiftNoise): EvidenceLine[] {
  if (gains.length === 0) return [];
  const slope = gainSlope(gains, gainNoise(gains, noise));
  return [clubLine(gains, slope), ...lifterLines(slope)].map((line) => ({ ...line, variant }));
}

function clubLine(gains: readonly GymGain[], slope: GainSlope | null): EvidenceLine {
  if (slope === null) return bareLine(gains);
  return { ...bareLine(gains), effect: rangeOf(slope.adjusted ?? slope.naive), naive: rangeOf(slope.naive) };
}

function lifterLines(slope: GainSlope | null): EvidenceLine[] {
  return (slope?.byLifter ?? []).map(({ lifterId, observations, naive, adjusted }) => ({
    ...emptyLine,
    lifterId,
    lifters: 1,
    observations,
    effect: rangeOf(adjusted ?? naive),
    naive: rangeOf(naive),
  }));
}
