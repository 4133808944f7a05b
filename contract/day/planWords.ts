import { z } from 'zod';

const id = z.string();
const named = z.array(z.strictObject({ id, label: z.string() }));

/** What screen and paper say beside the figures of a plan, as it was when the plan was made. */
export const planWords = z.strictObject({
  club: z.string(),
  invented: z.boolean(),
  /** By whose clock the time of its making is told. */
  timeZone: z.string(),
  /** The club's step for bars on the wall; null: as they weigh. */
  wallStepKg: z.number().nullable(),
  title: z.string(),
  /** What the coach wrote for everybody who reads the sheet. */
  note: z.string(),
  /** What the coach wrote for one lifter; who has none is left out. */
  notes: z.array(z.strictObject({ groupId: id, lifterId: id, note: z.string() })),
  /** Racks in the order of their sheets. */
  rackIds: z.array(id),
  /** Discs as they are drawn, by the figure on the face. */
  discs: z.array(
    z.strictObject({
      faceMassKg: z.number(),
      diameterM: z.number().nullable(),
      thicknessM: z.number().nullable(),
    }),
  ),
  /** How the gear was called that its cautions name. */
  gear: z.strictObject({
    bandPair: named,
    anchor: named,
    chainPair: named,
    bar: named,
    collarPair: named,
    box: named,
    rack: named,
  }),
});
export type PlanWords = z.infer<typeof planWords>;
export type PlaceNote = PlanWords['notes'][number];
