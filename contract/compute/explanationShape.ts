import { z } from 'zod';
import type { ExplainedForce, Explanation } from '#core/day/Explanation.ts';

const force = z.object({
  total_N: z.number(),
  low95_N: z.number(),
  high95_N: z.number(),
  bar_N: z.number(),
  band_N: z.number(),
  chain_N: z.number(),
});

/** Why a setup is what it is for this lifter. */
export const explanation = z.object({
  bar_kg: z.number(),
  bottom: force,
  mid: force,
  lockout: force,
  mean: force,
  percentages: z
    .array(z.object({ basis: z.string(), share: z.number(), low95: z.number(), high95: z.number() }))
    .describe('Shares of reference_kg, each on its own basis'),
  shares: z
    .array(z.object({ s: z.number(), z_m: z.number(), share: z.number() }))
    .describe('Load over what could just be held still at that height'),
  firstRep: z.object({
    made: z.boolean(),
    meanSpeed_mps: z.number(),
    peakSpeed_mps: z.number(),
    duration_s: z.number(),
    slowest: z.object({ s: z.number(), speed_mps: z.number() }),
  }),
  foreAft: z.object({ bottom_N: z.number(), lockout_N: z.number() }),
  anchors: z.array(
    z.object({ anchorId: z.string(), pull_N: z.number(), ratedLoad_N: z.number().nullable() }),
  ),
  slackBelow_m: z.number().nullable(),
  cautions: z.array(
    z.object({ code: z.string(), bandPairId: z.string().optional(), anchorId: z.string().optional() }),
  ),
});

export function fromExplanation(one: Explanation): z.input<typeof explanation> {
  const { firstRep } = one;
  return {
    bar_kg: one.barKg,
    bottom: fromForce(one.bottom),
    mid: fromForce(one.mid),
    lockout: fromForce(one.lockout),
    mean: fromForce(one.mean),
    percentages: one.percentages,
    shares: one.shares.map(({ s, zM, share }) => ({ s, z_m: zM, share })),
    firstRep: {
      made: firstRep.made,
      meanSpeed_mps: firstRep.meanSpeedMps,
      peakSpeed_mps: firstRep.peakSpeedMps,
      duration_s: firstRep.durationS,
      slowest: { s: firstRep.slowestS, speed_mps: firstRep.slowestSpeedMps },
    },
    foreAft: { bottom_N: one.foreAft.bottomN, lockout_N: one.foreAft.lockoutN },
    anchors: one.anchors.map(({ anchorId, pullN, ratedLoadN }) => ({
      anchorId,
      pull_N: pullN,
      ratedLoad_N: ratedLoadN,
    })),
    slackBelow_m: one.slackBelowM,
    cautions: one.cautions.map((caution) => ({
      code: caution.code,
      ...('pairId' in caution ? { bandPairId: caution.pairId } : {}),
      ...('anchorId' in caution ? { anchorId: caution.anchorId } : {}),
    })),
  };
}

function fromForce(one: ExplainedForce): z.input<typeof force> {
  return {
    total_N: one.totalN,
    low95_N: one.low95N,
    high95_N: one.high95N,
    bar_N: one.barN,
    band_N: one.bandN,
    chain_N: one.chainN,
  };
}
