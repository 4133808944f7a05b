import { z } from 'zod';
import type { Load } from '#core/load/Load.ts';
import type { Chain, HungBand } from '#core/rig/Rig.ts';
import { band, toRiggedBand } from './bandShape.ts';
import {
  count,
  fields,
  finite,
  forceEitherWay,
  length,
  lengthOrNone,
  mass,
  massOrNone,
  place,
} from './fields.ts';
import { checkTravel, refuseSameHeight, toTravel, travelFields } from './travelShape.ts';

export const hungBand = fields({
  verticalAt: z
    .array(fields({ z_m: place, force_N: forceEitherWay }))
    .min(2)
    .describe('Vertical pull of one band read on a scale, at two bar heights or more; down is positive'),
  count,
}).superRefine(({ verticalAt }, context) => refuseSameHeight(verticalAt, 'verticalAt', context));

export const chainFields = { massPerMetre_kg: mass, length_m: length, attachBelowBar_m: lengthOrNone };

const chain = fields({ ...chainFields, count });

const loadFields = {
  bar_kg: massOrNone.describe('Bar, discs and collars'),
  bands: z.array(band).default([]),
  hungBands: z.array(hungBand).default([]),
  chains: z.array(chain).default([]),
  ...travelFields,
};

export const load = fields(loadFields).superRefine(checkTravel);

/** The same where the bar is what is looked for: a `bar_kg` that is given is ignored. */
export const loadWithoutBar = fields({ ...loadFields, bar_kg: finite.optional() }).superRefine(checkTravel);

/** The load that stands in the field `load` of the document. */
export function toLoad(document: z.output<typeof load>): Load {
  return {
    ...toTravel(document),
    barKg: document.bar_kg,
    bands: document.bands.map((band, i) => toRiggedBand(band, `load.bands[${i}]`)),
    hungBands: document.hungBands.map(toHungBand),
    chains: document.chains.map(toChain),
  };
}

export function toHungBand({ verticalAt, count }: z.output<typeof hungBand>): HungBand {
  return { verticalAt: verticalAt.map(({ z_m, force_N }) => ({ zM: z_m, forceN: force_N })), count };
}

export function toChain(document: z.output<typeof chain>): Chain {
  return {
    massPerMetreKg: document.massPerMetre_kg,
    lengthM: document.length_m,
    attachBelowBarM: document.attachBelowBar_m,
    count: document.count,
  };
}
