import { z } from 'zod';
import { basis } from '#contract/records/day.ts';

const id = z.string();
const n = z.number();

/** Bands and chains on a bar, with the words that a rack sheet says of them. */
export const setOnBar = z.strictObject({
  bands: z.array(
    z.strictObject({ bandPairId: id, hookupId: id, label: z.string(), hookupWords: z.string() }),
  ),
  chains: z.array(z.strictObject({ chainPairId: id, label: z.string(), pairs: n.int() })),
});

/** What speaks for it beside the setup that stands; the shape of core's `SpeaksFor`. Misfits as shares, masses in kg. */
const speaksFor = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('nearerToAim'), misfitLess: n }),
  z.strictObject({ code: z.literal('fewerPieces'), pieces: n }),
  z.strictObject({ code: z.literal('allMeasured') }),
  z.strictObject({ code: z.literal('samePairs') }),
  z.strictObject({ code: z.literal('heavierBar'), kg: n }),
  z.strictObject({ code: z.literal('lighterBar'), kg: n }),
  z.strictObject({ code: z.literal('nearlyAsGood'), misfitMore: n }),
]);

/** Another proposal for one lifter's bar: what it would be, so that a coach can compare it with the one that stands. */
export const otherSetup = z.strictObject({
  set: setOnBar,
  /** Bar, collars and discs of the aim, as loaded. */
  barKg: n,
  /** Load over what the lifter could just hold still there. */
  shareAtBottom: n,
  shareAtLockout: n,
  /** Shares of the reference maximum, each on its own basis. */
  percentages: z.array(z.strictObject({ basis, share: n })),
  /** Mean speed of the first rep or of the whole set, as the aim asks; null for an aim at no speed. */
  aimedMps: n.nullable(),
  speaksFor: z.array(speaksFor),
});
export type OtherSetup = z.infer<typeof otherSetup>;
