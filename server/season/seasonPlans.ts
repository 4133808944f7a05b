import type { ClubRecords } from '#contract/records/allKinds.ts';
import {
  type AskedPlan,
  type ClubSeason,
  clubSeason as clubSeasonShape,
} from '#contract/season/clubSeason.ts';
import type { SeasonOffer, TakenHead, TakenSeason } from '#contract/season/seasonOffer.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { clubSeason, type RecallPlan } from '#reckon/season/clubSeason.ts';
import { keepPast } from '#reckon/season/keepPast.ts';
import { planDifferences } from '#reckon/season/planDifferences.ts';
import { newestKept } from '#server/jobs/newestKept.ts';
import { oncePerState } from '#server/jobs/oncePerState.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

export type SeasonPlans = ReturnType<typeof seasonPlans>;

/** The plans of a season: as the records ask for it now, as it was taken, how the two differ. */
export function seasonPlans(store: ClubStore) {
  const planOf = keptPlans();
  const readTaken = keptTaken(store);

  /** The records of now, and what was taken of a season that is among them. */
  async function standing(seasonId: string) {
    const { records } = await store.records();
    if (!records.season.some(({ id }) => id === seasonId))
      throw new Refusal('missing', 'id', `The club has no season with the id "${seasonId}".`);
    const today = await store.today();
    const taken = await store.takenPlans(seasonId);
    const head = taken.at(-1);
    const last = (head && (await readTaken(head))?.plan) ?? null;
    /** A plan with what is past as the last one that was taken has it. */
    const withPast = (plan: ClubSeason) => (last ? keepPast(last, plan, today, gravityOf(records)) : plan);
    return { records, today, taken, last, withPast };
  }

  /** The season as it would be taken now, beside what was taken. */
  async function offer(seasonId: string): Promise<SeasonOffer> {
    const { records, today, taken, last, withPast } = await standing(seasonId);
    const plan = withPast(planOf(records, seasonId, today));
    return { plan, taken, differences: last ? planDifferences(last, plan, today) : [] };
  }

  /** What was taken before, with what is past as the last one has it. */
  async function again(seasonId: string, number: number): Promise<ClubSeason> {
    const { withPast } = await standing(seasonId);
    const { plan } = await takenUnder(seasonId, number);
    if (plan === null)
      throw new Refusal(
        'conflict',
        'again',
        `Number ${number} of this season was written by another version of the program and cannot be taken again.`,
      );
    return withPast(plan);
  }

  async function takenUnder(seasonId: string, number: number): Promise<TakenSeason> {
    const head = (await store.takenPlans(seasonId)).find((one) => one.number === number);
    const kept = head && (await readTaken(head));
    if (!kept) throw new Refusal('missing', 'number', `This season has no plan number ${number}.`);
    return kept;
  }

  return {
    offer,
    again,
    takenUnder,
    /** The season as it would be taken now. */
    async now(seasonId: string) {
      const { records, today, withPast } = await standing(seasonId);
      return { season: withPast(planOf(records, seasonId, today)), records, today };
    },
    /** The plan that holds: the last one taken, else what the records ask for. */
    async held(seasonId: string) {
      const { records, today, last } = await standing(seasonId);
      return { season: last ?? planOf(records, seasonId, today), records, today };
    },
  };
}

/**
 * What the records ask for, worked out once for each state of them and each day. What is asked of a lifter as it was before has the plan that it had: of forty
 * lifters one change plans one anew.
 */
function keptPlans() {
  const known = oncePerState(() => new Map<string, ClubSeason>());
  const before = new Map<string, Map<string, AskedPlan>>();
  return (records: ClubRecords, seasonId: string, today: string): ClubSeason => {
    const of = known(records);
    const key = `${today} ${seasonId}`;
    const found = of.get(key);
    if (found) return found;
    const last = before.get(seasonId);
    const used = new Map<string, AskedPlan>();
    const recall: RecallPlan = (asked, make) => {
      const plan = last?.get(asked) ?? make();
      used.set(asked, plan);
      return plan;
    };
    const plan = clubSeason(records, seasonId, today, recall);
    before.set(seasonId, used);
    of.set(key, plan);
    return plan;
  };
}

/** Plans as they were taken, the last ones asked for read once each: what stands under a number never changes. */
function keptTaken(store: ClubStore) {
  const kept = newestKept<TakenSeason>(mostKept);
  return async ({ id, seasonId, number }: TakenHead): Promise<TakenSeason | null> => {
    const known = kept.get(id);
    if (known) return known;
    const found = await store.takenPlan(seasonId, number);
    if (!found) return null;
    const { document, ...head } = found;
    const read = { ...head, plan: clubSeasonShape.safeParse(document).data ?? null };
    kept.set(id, read);
    return read;
  };
}

/** The seasons that a club has at a time, and an older plan or two. */
const mostKept = 6;
