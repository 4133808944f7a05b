import { z } from 'zod';
import type { GearSet, RackGear } from '#core/day/Gear.ts';
import type { Fixed } from '#core/day/rankSetups.ts';
import { band, toBandCurves, toRiggedBand } from './bandShape.ts';
import { fields, force, mass, massOrNone, positive } from './fields.ts';
import { InputError } from './InputError.ts';
import { chainFields, hungBand, toChain, toHungBand } from './loadShape.ts';

const id = z.string().min(1).max(64);

export const barAndDiscFields = {
  bar_kg: massOrNone,
  collars_kg: massOrNone.describe('Both collars together'),
  discs: z.array(fields({ mass_kg: positive.max(200), pairs: z.int().min(0).max(1000) })).max(50),
};

const pairHookup = fields({
  bandPairId: id,
  hookupId: id,
  anchorId: id.default('anchor'),
  ratedLoad_N: force.nullable().default(null).describe('What one anchor point may carry'),
  bands: z
    .array(band)
    .min(1)
    .max(2)
    .describe('The pair: two bands of count 1, or two alike as one of count 2'),
  measured: hungBand
    .nullable()
    .default(null)
    .describe('Pull read on a scale in this hookup; overrules geometry'),
});

const chainKind = fields({ chainPairId: id, ...chainFields, pairs: z.int().min(0).max(10) });

/** All that may go on one rack's bar. */
export const gear = fields({
  ...barAndDiscFields,
  hookups: z.array(pairHookup).max(60).default([]),
  chains: z.array(chainKind).max(6).default([]),
});

/** Bands and chains on the bar. */
export const setFields = {
  bands: z.array(fields({ bandPairId: id, hookupId: id })).max(6),
  chains: z.array(fields({ chainPairId: id, pairs: z.int().min(1).max(10) })).max(6),
};

/** What the coach fixed by hand; what is left out is free. */
export const fixed = fields({
  bar_kg: mass.optional(),
  bands: setFields.bands.optional(),
  chains: setFields.chains.optional(),
});

/** The gear that stands at `field` of the document; `toCurves` fits its bands. */
export function toRackGear(
  document: z.output<typeof gear>,
  field: string,
  toCurves = toBandCurves,
): RackGear {
  refuseTwice(
    document.hookups.map(({ bandPairId, hookupId }) => `${bandPairId} in the hookup ${hookupId}`),
    (index) => `${field}.hookups[${index}]`,
  );
  refuseTwice(
    document.chains.map(({ chainPairId }) => chainPairId),
    (index) => `${field}.chains[${index}].chainPairId`,
  );
  return {
    barKg: document.bar_kg,
    collarsKg: document.collars_kg,
    discs: document.discs.map(({ mass_kg, pairs }) => ({ massKg: mass_kg, pairs })),
    hookups: document.hookups.map(({ bandPairId, hookupId, anchorId, ratedLoad_N, bands, measured }, h) => ({
      pairId: bandPairId,
      hookupId,
      anchorId,
      ratedLoadN: ratedLoad_N,
      rigged: bands.map((band, b) => toRiggedBand(band, `${field}.hookups[${h}].bands[${b}]`, toCurves)),
      measured: measured && toHungBand(measured),
    })),
    chains: document.chains.map(({ chainPairId, pairs, ...chain }) => ({
      chainPairId,
      pairs,
      chain: toChain({ ...chain, count: 2 }),
    })),
  };
}

/** Finds what the coach fixed in the gear; `field` names the document's place in an error. */
export function toFixed(document: z.output<typeof fixed> | undefined, gear: RackGear, field: string): Fixed {
  const { bar_kg, bands, chains } = document ?? {};
  const set = bands || chains ? toGearSet({ bands: bands ?? [], chains: chains ?? [] }, gear, field) : null;
  return { barKg: bar_kg ?? null, set };
}

function toGearSet(
  { bands, chains }: { bands: z.output<typeof setFields.bands>; chains: z.output<typeof setFields.chains> },
  gear: RackGear,
  field: string,
): GearSet {
  refuseTwice(
    bands.map(({ bandPairId }) => bandPairId),
    (index) => `${field}.bands[${index}].bandPairId`,
  );
  refuseTwice(
    chains.map(({ chainPairId }) => chainPairId),
    (index) => `${field}.chains[${index}].chainPairId`,
  );
  const hookups = bands.map(({ bandPairId, hookupId }, index) => {
    const at = gear.hookups.findIndex((one) => one.pairId === bandPairId && one.hookupId === hookupId);
    if (at >= 0) return at;
    throw unknown(`${field}.bands[${index}]`, `the band pair ${bandPairId} in the hookup ${hookupId}`);
  });
  chains.forEach(({ chainPairId }, index) => {
    if (gear.chains.some((one) => one.chainPairId === chainPairId)) return;
    throw unknown(`${field}.chains[${index}].chainPairId`, `the chain ${chainPairId}`);
  });
  const pairsOf = (id: string) => chains.find(({ chainPairId }) => chainPairId === id)?.pairs ?? 0;
  return {
    hookups: hookups.sort((a, b) => a - b),
    chainPairs: gear.chains.map(({ chainPairId }) => pairsOf(chainPairId)),
  };
}

/** One name may stand once in its list; `fieldAt` names the place of the second. */
export function refuseTwice(names: readonly string[], fieldAt: (index: number) => string): void {
  const again = names.findIndex((name, index) => names.indexOf(name) < index);
  if (again < 0) return;
  const field = fieldAt(again);
  throw new InputError({ field, message: `${field} lists ${names[again]} twice; it must be listed once.` });
}

function unknown(field: string, what: string): InputError {
  return new InputError({ field, message: `${field} is not in the gear: ${what} must be listed there.` });
}

/** Spells a set by the ids of the gear. */
export function fromGearSet({ hookups, chainPairs }: GearSet, gear: RackGear) {
  return {
    bands: hookups.flatMap((index) => {
      const hookup = gear.hookups[index];
      return hookup ? [{ bandPairId: hookup.pairId, hookupId: hookup.hookupId }] : [];
    }),
    chains: gear.chains.flatMap(({ chainPairId }, index) => {
      const pairs = chainPairs[index] ?? 0;
      return pairs > 0 ? [{ chainPairId, pairs }] : [];
    }),
  };
}
