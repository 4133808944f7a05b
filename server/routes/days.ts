import { setImmediate as othersFirst } from 'node:timers/promises';
import { Hono } from 'hono';
import { z } from 'zod';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { LastTime } from '#contract/day/lastTime.ts';
import { planOf } from '#contract/day/planOf.ts';
import type { StandingPrescription } from '#contract/day/signedPrescription.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day, Place } from '#contract/records/day.ts';
import { type Prescription, prescription } from '#contract/records/prescription.ts';
import { changedSince } from '#reckon/day/changedSince.ts';
import { lacksLog } from '#reckon/day/lacksLog.ts';
import { movedSince } from '#reckon/day/movedSince.ts';
import { planBasis } from '#reckon/day/planBasis.ts';
import { toldAnew } from '#reckon/day/toldAnew.ts';
import { wordsNow } from '#reckon/day/wordsOf.ts';
import { wordsSince } from '#reckon/day/wordsSince.ts';
import { endsOfSet } from '#reckon/log/endsOfSet.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { dayPlans } from '#server/jobs/dayPlans.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptLastTimes } from '#server/jobs/keptLastTimes.ts';
import { AskerLeft } from '#server/jobs/waiting.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import { signPrescription } from '#server/signPrescription.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { momentAfter } from '#store/moment.ts';
import { Refusal } from '#store/Refusal.ts';
import { askedTogether } from './askedTogether.ts';

/**
 * What was solved for a training day: solve it now, read what was solved last, or what was before it, whether it still holds, and
 * what the log could tell anew of it. What was kept under a number is never told otherwise.
 */
export function dayRoutes(
  store: ClubStore,
  run: RunWork,
  estimator: StrengthEstimator,
  keepIn: KeptAnswers,
  news: WorkNews,
) {
  const plans = dayPlans(run, keepIn, news);
  const basisOf = keptBasis();
  const lastTime = keptLastTimes(store);

  async function withDay(id: string) {
    const { records, seq } = await store.records();
    const day = records.day.find((candidate) => candidate.id === id);
    if (!day) throw new Refusal('missing', 'id', `The club has no training day with the id "${id}".`);
    return { records, seq, day };
  }

  /** What is lifted already is no longer to be planned anew. */
  async function hasBegun({ id, date }: Day): Promise<boolean> {
    if (date < (await store.today())) return true;
    return store.hasSets(id);
  }

  async function keep(dayId: string, plan: DayPlan): Promise<StandingPrescription> {
    // What was changed before is told from what is changed after by the moment.
    const { madeAt } = await store.standing();
    return beside(await withDay(dayId), await store.addPrescription(dayId, momentAfter(madeAt), plan));
  }

  function beside(
    { records, day }: { records: ClubRecords; day: Day },
    kept: Prescription,
  ): StandingPrescription {
    return { ...signPrescription(kept), basisNow: basisOf(records, day) };
  }

  /** What each lifter of the day did the last time. */
  async function lastTimesOf(records: ClubRecords, { id, date, groups }: Day): Promise<LastTime[]> {
    const told: LastTime[] = [];
    for (const group of groups) {
      for (const place of group.places) {
        const { lifterId } = place;
        const { lift } = group;
        const sets = await lastTime(lifterId, {
          lift,
          start: startOf(group, place),
          before: date,
          ofDay: id,
        });
        const [first] = sets;
        if (first === undefined) continue;
        // Curves of bands that were never asked for are fitted here: others are answered between two lifters.
        await othersFirst();
        const ends = endsOfSet(records, first);
        const [bottomKg, lockoutKg] = [ends?.bottomKg ?? null, ends?.lockoutKg ?? null];
        told.push({ groupId: group.id, lifterId, sets, bottomKg, lockoutKg });
      }
    }
    return told;
  }

  /** What the log could tell anew of the last plan by now, and of whom: to be offered, for what was kept stays as it is. */
  async function retelling(id: string) {
    const { records, day } = await withDay(id);
    const kept = await store.latestPrescription(day.id);
    const nobody = { lifters: [], likelyToMiss: [] };
    const nothing = { day, kept, document: null, told: nobody, awaited: [] };
    const plan = kept && planOf(kept);
    const open = plan?.groups.flatMap(({ places }) => places.filter(lacksLog)) ?? [];
    // Of a day that is past the log knows how it went; of other gear than now stands here nothing can be told.
    const holds = plan?.basis === basisOf(records, day) && day.date >= (await store.today());
    if (!kept || !plan || open.length === 0 || !holds) return nothing;
    const isOpen = ({ lifterId }: Place) => open.some((seat) => seat.lifterId === lifterId);
    const groups = day.groups.map((group) => ({ ...group, places: group.places.filter(isOpen) }));
    const { estimates, awaited } = await estimator.ofDay({ ...day, groups });
    const byLog = await plans.byLog({ number: kept.number, records, day, plan, estimates });
    // Another number says what the club would write today.
    const document = byLog && { ...byLog, words: wordsNow(records, day, byLog.groups) };
    return { day, kept, document, told: document ? toldAnew(plan, document) : nobody, awaited };
  }

  /** The last plan as it is, in the words of the club of today; null: there is nothing to change, or its loads no longer hold. */
  async function rewording(id: string) {
    const { records, day } = await withDay(id);
    const kept = await store.latestPrescription(day.id);
    const plan = kept && planOf(kept);
    const holds = plan?.basis === basisOf(records, day);
    if (!kept || !plan || !holds || wordsSince(plan, records, day).length === 0)
      return { day, kept, document: null };
    const groups = plan.groups.map((group) => {
      const title = day.groups.find(({ id }) => id === group.groupId)?.title ?? group.title;
      return { ...group, title };
    });
    const words = wordsNow(records, day, groups);
    return { day, kept, document: { ...plan, groups, words, retells: kept.number } };
  }

  /** Whose strength the log has moved since the last plan; of a day that has begun, nobody's. */
  async function moved(id: string) {
    const { day } = await withDay(id);
    const kept = await store.latestPrescription(day.id);
    const plan = kept && planOf(kept);
    if (!plan || (await hasBegun(day))) return { moved: [], awaited: [] };
    const { estimates, awaited } = await estimator.ofDay(day);
    return { moved: movedSince(plan, estimates), awaited };
  }

  let betterTimes = 0;
  estimator.onNews(() => {
    betterTimes += 1;
  });
  const state = async () => `${await store.latestSeq()} ${betterTimes}`;
  const retellingNow = askedTogether(state, async (id) => {
    const { kept, told, awaited } = await retelling(id);
    return { number: kept?.number ?? null, ...told, awaited };
  });
  const movedNow = askedTogether(state, moved);

  return new Hono()
    .post('/days/:id/solve', noQuery, async (c) => {
      const id = c.req.param('id');
      const asked = await withDay(id);
      const { signal } = c.req.raw;
      const plan = await plans.solve({ ...asked, ...(await estimator.ofDay(asked.day)) }, { signal });
      // Who stopped it wants no other number.
      if (signal.aborted) throw new AskerLeft();
      return c.json(await keep(id, plan));
    })
    .post('/days/:id/outlook', noQuery, async (c) => {
      const asked = await withDay(c.req.param('id'));
      const plan = await plans.solve({ ...asked, ...(await estimator.ofDay(asked.day)) });
      return c.json({ document: plan });
    })
    .get('/days/:id/changed', noQuery, async (c) => {
      const { day } = await withDay(c.req.param('id'));
      const kept = await store.latestPrescription(day.id);
      const changes = kept === null ? [] : await store.changesMadeAfter(kept.solvedAt);
      const entries = changes.flatMap((change) => change.entries);
      return markedJson(c, { changes: changedSince(entries, day) });
    })
    .get('/days/:id/prescription', noQuery, async (c) => {
      const found = await withDay(c.req.param('id'));
      const kept = await store.latestPrescription(found.day.id);
      return markedJson(c, kept && beside(found, kept));
    })
    .get('/days/:id/retelling', noQuery, async (c) => markedJson(c, await retellingNow(c.req.param('id'))))
    .post('/days/:id/retelling', noQuery, async (c) => {
      const { number, by } = asShaped(retellingShape, await readJson(c));
      const id = c.req.param('id');
      const { day, kept, document } = await (by === 'log' ? retelling(id) : rewording(id));
      if (kept === null)
        throw new Refusal('missing', 'number', `This day has no prescription number ${number}.`);
      if (kept.number !== number)
        throw new Refusal(
          'conflict',
          'number',
          `number is ${number}; number ${kept.number} is the last of this day now, and only the last one can be told anew.`,
        );
      if (document === null) throw new Refusal('conflict', '', nothingToTell[by](number));
      return c.json(await keep(day.id, document));
    })
    .get('/days/:id/last-time', noQuery, async (c) => {
      const { records, day } = await withDay(c.req.param('id'));
      return markedJson(c, { lastTimes: await lastTimesOf(records, day) });
    })
    .get('/days/:id/moved', noQuery, async (c) => markedJson(c, await movedNow(c.req.param('id'))))
    .get('/days/:id/prescriptions/:number{[0-9]+}', noQuery, async (c) => {
      const number = Number(c.req.param('number'));
      const kept = await store.prescription(c.req.param('id'), number);
      if (!kept) throw new Refusal('missing', 'number', `This day has no prescription number ${number}.`);
      return markedJson(c, signPrescription(kept));
    });
}

const retellingShape = z.strictObject({
  number: prescription.shape.number,
  by: z.enum(['log', 'words']).default('log'),
});

const nothingToTell = {
  log: (number: number) => `The log has nothing to add to number ${number} of this day.`,
  words: (number: number) =>
    `Number ${number} of this day says what the club would write now, or its loads no longer hold.`,
};
/** What a day's loads rest on, worked out once for each state of the records. */
function keptBasis(): typeof planBasis {
  const known = new WeakMap<Day, { records: ClubRecords; basis: string }>();
  return (records, day) => {
    const kept = known.get(day);
    if (kept?.records === records) return kept.basis;
    const basis = planBasis(records, day);
    known.set(day, { records, basis });
    return basis;
  };
}
