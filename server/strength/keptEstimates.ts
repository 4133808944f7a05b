import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import { type RunWork, work } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import { type HowAsked, newestFirst } from '#server/jobs/newestFirst.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type ClubShowed, expectedOf } from './clubShowed.ts';
import { type EstimateBasis, newestBasis } from './estimateBasis.ts';
import { liftWorks } from './liftWorks.ts';

/** What an estimate rests on: the day, what was believed before the log, and the records and the log themselves. */
export interface EstimateMark {
  on: string;
  prior: string;
  content: string;
}

export interface KeptEstimates {
  /** The club as it stands now. */
  basis(): Promise<EstimateBasis>;
  /** The mark that an estimate made now would bear, or as the club stood; undefined where nothing is known of the lift. */
  markOf(of: LiftOnDay, club?: EstimateBasis): Promise<EstimateMark | undefined>;
  /**
   * Null where nothing is known. Sets logged since the estimate before are taken into it alone, and the whole log is weighed
   * again afterwards. `behind`: after all that somebody waits for, and by the whole log.
   */
  estimateOf(of: LiftOnDay, how?: HowAsked): Promise<StrengthEstimate | null>;
  /** From now on lifters are believed to be as the club showed before their logs; without it, as in the population. */
  expect(showed: ClubShowed): Promise<void>;
  /** What is believed now before the logs. */
  showed(): Promise<ClubShowed | undefined>;
  /**
   * The estimate before for this day and under what is now believed before the log, behind all that somebody waits for; by the
   * whole log where there is none to go on from.
   */
  believeAnew(of: LiftOnDay): Promise<StrengthEstimate | null>;
  /** Tells each estimate that is given out, with the mark of all that it rests on. */
  onGiven(listener: Listener): void;
}

type Listener = (of: LiftOnDay, mark: EstimateMark, estimate: StrengthEstimate | null) => void;

interface Hearers {
  /** The whole log was weighed in the place of an estimate that had taken sets in alone. */
  onWeighed: () => void;
  /** What nobody waits for went wrong. */
  onFault: (error: unknown) => void;
}

/** Whole estimates that are kept; the one not asked for the longest goes first. */
const keptCount = 240;

/**
 * Works estimates out once for each state of what they rest on; `goesOn`: from the ones before, where that is possible. What is kept
 * `keepIn` outlives the server.
 */
export function keptEstimates(
  store: ClubStore,
  run: RunWork,
  goesOn: boolean,
  keepIn: KeptAnswers,
  { onWeighed, onFault }: Hearers,
): KeptEstimates {
  const basis = newestBasis(store);
  const works = liftWorks(store, basis, run, { goesOn, keepIn });
  const listeners: Listener[] = [];
  const learned = newestShowed(keepIn, basis);

  const wholes = keptWork({
    most: keptCount,
    width: work.lanes.lifts.threads,
    keepIn: keepIn.of('estimates', keptCount),
    keyOf,
    restsOn: (of: LiftOnDay) => restsOn(of),
    work: async (of, { marks }) => marks && works.weigh(of, marks),
    isWhole: (estimate: StrengthEstimate | null) => !estimate?.takenIn,
    onGiven(of, { basis: [on, prior, content], answer }, before) {
      const mark = { on, prior, content } as EstimateMark;
      if (content !== undefined) for (const listener of listeners) listener(of, mark, answer);
      if (before?.takenIn && !answer?.takenIn) onWeighed();
    },
  });
  const quicks = newestFirst<StrengthEstimate | null>(work.lanes.newest.threads);

  /** Without marks where nothing is known of the lift. */
  async function restsOn({ lifterId, lift, on }: LiftOnDay, club?: EstimateBasis) {
    const { marksOf } = club ?? (await basis());
    const found = (await marksOf(lifterId)).get(lift);
    if (found === undefined) return { basis: [] as string[], marks: null };
    const { mark, butForNewSets, setsInLog } = found;
    const expected = (await learned.expected())(lifterId, lift);
    return { basis: [on, expected.mark, mark], marks: { butForNewSets, setsInLog, expected } };
  }

  async function estimateOf(of: LiftOnDay, how: HowAsked = {}): Promise<StrengthEstimate | null> {
    const now = await wholes.stand(of);
    if (now.marks === null) return null;
    const known = wholes.given(of, now);
    if (known && !(how.behind && known.answer?.takenIn)) return known.answer;
    if (how.behind || !works.remembers(of)) return wholes.ask(of, how);
    return (await quicks.ask(keyOf(of), () => goOn(of), how)) ?? wholes.ask(of, how);
  }

  /**
   * From the estimate before: with the sets logged since, for another day or under what is now believed before the log. Null where
   * it takes the whole log. Work that had to wait is done with the club's records as they are when its turn comes.
   */
  async function goOn(of: LiftOnDay): Promise<StrengthEstimate | null> {
    const now = await wholes.stand(of);
    if (now.marks === null) return null;
    const known = wholes.given(of, now);
    if (known) return known.answer;
    const taken = await works.takeIn(of, now.marks);
    if (taken === null) {
      const estimate = await works.believeAnew(of, now.marks);
      if (estimate === null) return null;
      const landed = wholes.land(of, now, estimate);
      if (estimate.takenIn) wholes.ask(of, { behind: true }).catch(onFault);
      return landed;
    }
    const estimate = wholes.land(of, now, taken.estimate);
    wholes.ask(of, { behind: !taken.wholeIsDue }).catch(onFault);
    return estimate;
  }

  return {
    basis,
    async markOf(of, club) {
      const [on, prior, content] = (await restsOn(of, club)).basis;
      return content === undefined ? undefined : { on: on!, prior: prior!, content };
    },
    estimateOf,
    expect: learned.learn,
    showed: learned.showed,
    believeAnew: async (of) => {
      const anew = works.remembers(of) ? await quicks.ask(keyOf(of), () => goOn(of), { behind: true }) : null;
      return anew ?? wholes.ask(of, { behind: true });
    },
    onGiven: (listener) => void listeners.push(listener),
  };
}

/** What the club showed last, as it was kept of this very club. */
function newestShowed(keepIn: KeptAnswers, basis: () => Promise<EstimateBasis>) {
  const kept = keepIn.of('club showed', 1);
  const key = 'club';
  let newest: { showed: ClubShowed | undefined; expected: ReturnType<typeof expectedOf> } | undefined;
  async function now() {
    if (newest) return newest;
    const { club } = await basis();
    const found = kept.find(key);
    const showed = found?.basis[0] === club ? (found.answer as ClubShowed) : undefined;
    newest ??= { showed, expected: expectedOf(showed) };
    return newest;
  }
  return {
    showed: async () => (await now()).showed,
    expected: async () => (await now()).expected,
    async learn(showed: ClubShowed) {
      newest = { showed, expected: expectedOf(showed) };
      kept.put(key, { basis: [(await basis()).club], answer: showed, mark: null });
    },
  };
}

function keyOf({ lifterId, lift, on }: LiftOnDay): string {
  return `${lifterId} ${lift} ${on}`;
}
