import { Hono } from 'hono';
import { dayPlan } from '#contract/day/dayPlan.ts';
import type { Day, Place } from '#contract/records/day.ts';
import { lacksLog } from '#reckon/day/lacksLog.ts';
import { movedSince } from '#reckon/day/movedSince.ts';
import { planBasis } from '#reckon/day/planBasis.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { dayPlans } from '#server/jobs/dayPlans.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** What was solved for a training day: solve it now, read what was solved last, or what was before it, and whether it still holds. */
export function dayRoutes(store: ClubStore, run: RunWork, estimator: StrengthEstimator) {
  const plans = dayPlans(run);

  async function withDay(id: string) {
    const { records, seq } = await store.records();
    const day = records.day.find((candidate) => candidate.id === id);
    if (!day) throw new Refusal('missing', 'id', `The club has no training day with the id "${id}".`);
    return { records, seq, day };
  }

  /** What is lifted already is no longer to be planned anew. */
  async function hasBegun({ id, date }: Day): Promise<boolean> {
    if (date < (await store.today())) return true;
    return (await store.loggedSets({ dayId: id })).some(({ struckAt }) => struckAt === null);
  }

  return new Hono()
    .post('/days/:id/solve', noQuery, async (c) => {
      const id = c.req.param('id');
      const asked = await withDay(id);
      const plan = await plans.solve({ ...asked, ...(await estimator.ofDay(asked.day)) });
      return c.json(await store.addPrescription(id, new Date().toISOString(), plan));
    })
    .get('/days/:id/prescription', noQuery, async (c) => {
      const { day } = await withDay(c.req.param('id'));
      return c.json((await store.latestPrescription(day.id)) ?? null);
    })
    .get('/days/:id/awaited', noQuery, async (c) => {
      const { day } = await withDay(c.req.param('id'));
      const { awaited } = await estimator.ofDay(day);
      return c.json({ awaited });
    })
    .get('/days/:id/expected', noQuery, async (c) => {
      const { records, day } = await withDay(c.req.param('id'));
      const kept = await store.latestPrescription(day.id);
      const plan = kept && dayPlan.safeParse(kept.document).data;
      const open = plan?.groups.flatMap(({ places }) => places.filter(lacksLog)) ?? [];
      // Of a day that is past the log knows how it went; of other gear than now stands here nothing can be told.
      const holds = plan?.basis === planBasis(records, day) && day.date >= (await store.today());
      if (!kept || !plan || open.length === 0 || !holds)
        return c.json({ number: kept?.number ?? null, document: null, awaited: [] });
      const { number } = kept;
      const isOpen = ({ lifterId }: Place) => open.some((seat) => seat.lifterId === lifterId);
      const groups = day.groups.map((group) => ({ ...group, places: group.places.filter(isOpen) }));
      const { estimates, awaited } = await estimator.ofDay({ ...day, groups });
      const document = await plans.byLog({ number, records, day, plan, estimates });
      return c.json({ number, document, awaited });
    })
    .get('/days/:id/moved', noQuery, async (c) => {
      const { day } = await withDay(c.req.param('id'));
      const kept = await store.latestPrescription(day.id);
      const plan = kept && dayPlan.safeParse(kept.document).data;
      if (!plan || (await hasBegun(day))) return c.json({ moved: [], awaited: [] });
      const { estimates, awaited } = await estimator.ofDay(day);
      return c.json({ moved: movedSince(plan, estimates), awaited });
    })
    .get('/days/:id/prescriptions/:number{[0-9]+}', noQuery, async (c) => {
      const number = Number(c.req.param('number'));
      const kept = await store.prescription(c.req.param('id'), number);
      if (!kept) throw new Refusal('missing', 'number', `This day has no prescription number ${number}.`);
      return c.json(kept);
    });
}
