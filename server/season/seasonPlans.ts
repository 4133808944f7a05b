import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import { type ClubSeason, clubSeason as clubSeasonShape } from '#contract/season/clubSeason.ts';
import type { SeasonOffer, TakenSeason } from '#contract/season/seasonOffer.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { clubSeason } from '#reckon/season/clubSeason.ts';
import { keepPast } from '#reckon/season/keepPast.ts';
import { planDifferences } from '#reckon/season/planDifferences.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The plans of a season: as the records ask for it now, as it was taken, how the two differ. */
export function seasonPlans(store: ClubStore) {
  const planOf = keptPlans();

  async function lastTaken(seasonId: string) {
    const taken = await store.takenPlans(seasonId);
    const last = taken.at(-1);
    return { taken, last: last ? readTaken(await store.takenPlan(seasonId, last.number)) : null };
  }

  /** The season as it would be taken now, beside what was taken. */
  async function offer(seasonId: string): Promise<SeasonOffer & { records: ClubRecords; today: string }> {
    const { records } = await store.records();
    if (!records.season.some(({ id }) => id === seasonId))
      throw new Refusal('missing', 'id', `The club has no season with the id "${seasonId}".`);
    const today = await store.today();
    const { taken, last } = await lastTaken(seasonId);
    const now = planOf(records, seasonId, today);
    const plan = last ? keepPast(last, now, today, gravityOf(records)) : now;
    return { plan, taken, differences: last ? planDifferences(last, plan, today) : [], records, today };
  }

  /** What was taken before, with what is past as the last one has it. */
  async function again(seasonId: string, number: number): Promise<ClubSeason> {
    const { records, today } = await offer(seasonId);
    const { plan } = await takenUnder(seasonId, number);
    if (plan === null)
      throw new Refusal(
        'conflict',
        'again',
        `Number ${number} of this season was written by another version of the program and cannot be taken again.`,
      );
    const { last } = await lastTaken(seasonId);
    return last ? keepPast(last, plan, today, gravityOf(records)) : plan;
  }

  async function takenUnder(seasonId: string, number: number): Promise<TakenSeason> {
    const kept = await store.takenPlan(seasonId, number);
    if (!kept) throw new Refusal('missing', 'number', `This season has no plan number ${number}.`);
    const { document: _document, ...head } = kept;
    return { ...head, plan: readTaken(kept) };
  }

  return {
    offer,
    again,
    takenUnder,
    /** The plan that holds: the last one taken, else what the records ask for. */
    async held(seasonId: string) {
      const { plan, records, today } = await offer(seasonId);
      const { last } = await lastTaken(seasonId);
      return { season: last ?? plan, records, today };
    },
  };
}

function readTaken(kept: TakenPlan | null): ClubSeason | null {
  return clubSeasonShape.safeParse(kept?.document).data ?? null;
}

/** What the records ask for, worked out once for each state of them and each day. */
function keptPlans() {
  const known = new WeakMap<ClubRecords, Map<string, ClubSeason>>();
  return (records: ClubRecords, seasonId: string, today: string): ClubSeason => {
    const of = known.get(records) ?? new Map<string, ClubSeason>();
    known.set(records, of);
    const key = `${today} ${seasonId}`;
    const plan = of.get(key) ?? clubSeason(records, seasonId, today);
    of.set(key, plan);
    return plan;
  };
}
