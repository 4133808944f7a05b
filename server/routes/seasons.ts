import { Hono } from 'hono';
import { beyondBounds } from '#contract/json/beyondBounds.ts';
import { mostTakenValues } from '#contract/records/takenPlan.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { takingAsked } from '#contract/season/seasonOffer.ts';
import type { SentOffer, SentTaken } from '#contract/season/sentSeason.ts';
import { weeksOnce } from '#contract/season/sentWeeks.ts';
import { weekIntoDays } from '#reckon/season/weekIntoDays.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { loggedDays } from '#server/season/loggedDays.ts';
import { refuseNoMonday } from '#server/season/refuseNoMonday.ts';
import type { SeasonPlans } from '#server/season/seasonPlans.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { momentAfter } from '#store/moment.ts';
import { newId } from '#store/newId.ts';
import { Refusal } from '#store/Refusal.ts';

/** A season's plan, what was taken of it, and its weeks on the training days. */
export function seasonRoutes(store: ClubStore, { offer, again, takenUnder, held }: SeasonPlans) {
  /** What taking a week would do to the training days. */
  async function week(seasonId: string, monday: string) {
    refuseNoMonday(monday);
    const { season, records, today } = await held(seasonId);
    const logged = await loggedDays(store, records, monday);
    return weekIntoDays(season, monday, { records, today, logged, newId });
  }

  return new Hono()
    .get('/seasons/:id/plan', noQuery, async (c) => {
      const { plan, ...beside } = await offer(c.req.param('id'));
      return c.json({ ...beside, plan: weeksOnce(plan) } satisfies SentOffer);
    })
    .post('/seasons/:id/taken', noQuery, async (c) => {
      const id = c.req.param('id');
      const asked = asShaped(takingAsked, await readJson(c));
      const plan = asked.again === null ? (await offer(id)).plan : await again(id, asked.again);
      refuseTooLarge(plan);
      const { madeAt } = await store.standing();
      const { document: _document, ...head } = await store.addTakenPlan(id, momentAfter(madeAt), plan);
      return c.json(head, 201);
    })
    .get('/seasons/:id/taken/:number{[0-9]+}', noQuery, async (c) => {
      const { plan, ...head } = await takenUnder(c.req.param('id'), Number(c.req.param('number')));
      return c.json({ ...head, plan: plan && weeksOnce(plan) } satisfies SentTaken);
    })
    .get('/seasons/:id/weeks/:monday', noQuery, async (c) => {
      const { taking } = await week(c.req.param('id'), c.req.param('monday'));
      return c.json(taking);
    })
    .post('/seasons/:id/weeks/:monday', noQuery, async (c) => {
      const { days, taking } = await week(c.req.param('id'), c.req.param('monday'));
      const made = taking.days.map((day) => {
        const id = day.dayId ?? days.find(({ date }) => date === day.date)?.id ?? null;
        return { ...day, dayId: id };
      });
      const { seq } = await store.putAll('day', days);
      return c.json({ ...taking, days: made, seq });
    });
}

/** What an archive would not take back must not be kept. */
function refuseTooLarge(plan: ClubSeason): void {
  const beyond = beyondBounds(JSON.stringify(plan), mostTakenValues);
  if (beyond !== null)
    throw new Refusal(
      'conflict',
      '',
      `The plan ${beyond}, since ${plan.plans.length} of the lifters have plans of their own. Make two seasons of it.`,
    );
}
