import type { Lift } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import { type RunWork, work } from '#server/jobs/jobs.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import { type HowAsked, newestFirst } from '#server/jobs/newestFirst.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type EstimateBasis, newestBasis } from './estimateBasis.ts';
import { liftWorks } from './liftWorks.ts';

/** What to believe of each lifter before their own log. */
type Priors = ReadonlyMap<Lift, (lifterId: string) => Prior>;

export interface KeptEstimates {
  /** The club as it stands now. */
  basis(): Promise<EstimateBasis>;
  /** The mark that an estimate made now would bear; undefined where nothing is known of the lift. */
  markOf(of: LiftOnDay): Promise<string | undefined>;
  /**
   * Null where nothing is known. Sets logged since the estimate before are taken into it alone, and the whole log is weighed
   * again afterwards. `behind`: after all that somebody waits for, and by the whole log.
   */
  estimateOf(of: LiftOnDay, how?: HowAsked): Promise<StrengthEstimate | null>;
  /** From now on lifters are believed to be so before their logs; without it, as in the population. */
  expect(priors: Priors): void;
  /** The estimate under what is now believed before the log, behind all that somebody waits for. */
  believeAnew(of: LiftOnDay): Promise<StrengthEstimate | null>;
  /** Tells each estimate that is given out, with the mark of all that it rests on. */
  onGiven(listener: Listener): void;
}

type Listener = (of: LiftOnDay, mark: string, estimate: StrengthEstimate | null) => void;

interface Hearers {
  /** The whole log was weighed in the place of an estimate that had taken sets in alone. */
  onWeighed: () => void;
  /** What nobody waits for went wrong. */
  onFault: (error: unknown) => void;
}

/** Whole estimates that are kept; the one not asked for the longest goes first. */
const keptCount = 240;

/** Works estimates out once for each state of what they rest on; `goesOn`: from the ones before, where that is possible. */
export function keptEstimates(
  store: ClubStore,
  run: RunWork,
  goesOn: boolean,
  { onWeighed, onFault }: Hearers,
): KeptEstimates {
  const basis = newestBasis(store);
  const works = liftWorks(store, basis, run, goesOn);
  const listeners: Listener[] = [];
  let priors: Priors = new Map();
  let timesExpected = 0;

  const wholes = keptWork({
    most: keptCount,
    width: work.lanes.lifts.threads,
    keyOf,
    restsOn,
    work: async (of, { marks }) => marks && works.weigh(of, marks),
    isWhole: (estimate: StrengthEstimate | null) => !estimate?.takenIn,
    onGiven(of, { basis: [mark], answer }, before) {
      if (typeof mark === 'string') for (const listener of listeners) listener(of, mark, answer);
      if (before?.takenIn && !answer?.takenIn) onWeighed();
    },
  });
  const quicks = newestFirst<StrengthEstimate | null>(work.lanes.newest.threads);

  /** Without marks where nothing is known of the lift. */
  async function restsOn({ lifterId, lift, on }: LiftOnDay) {
    const found = (await (await basis()).marksOf(lifterId)).get(lift);
    if (found === undefined) return { basis: [], marks: null };
    const { mark, butForNewSets, setsInLog } = found;
    const prior = priors.get(lift)?.(lifterId) ?? populationPrior(lift);
    return { basis: [`${on} ${timesExpected} ${mark}`], marks: { butForNewSets, setsInLog, prior } };
  }

  async function estimateOf(of: LiftOnDay, how: HowAsked = {}): Promise<StrengthEstimate | null> {
    const now = await wholes.stand(of);
    if (now.marks === null) return null;
    const known = wholes.given(of, now);
    if (known) return known.answer;
    if (how.behind || !works.remembers(of)) return wholes.ask(of, how);
    return (await quicks.ask(keyOf(of), () => goOn(of), how)) ?? wholes.ask(of, how);
  }

  /**
   * From the estimate before: with the sets logged since, or under what is now believed before the log. Null where it takes the
   * whole log. Work that had to wait is done with the club's records as they are when its turn comes.
   */
  async function goOn(of: LiftOnDay): Promise<StrengthEstimate | null> {
    const now = await wholes.stand(of);
    if (now.marks === null) return null;
    const known = wholes.given(of, now);
    if (known) return known.answer;
    const taken = await works.takeIn(of, now.marks);
    if (taken === null) {
      const estimate = await works.believeAnew(of, now.marks);
      return estimate && wholes.land(of, now, estimate);
    }
    const estimate = wholes.land(of, now, taken.estimate);
    wholes.ask(of, { behind: !taken.wholeIsDue }).catch(onFault);
    return estimate;
  }

  return {
    basis,
    markOf: async (of) => (await restsOn(of)).basis[0],
    estimateOf,
    expect(learned) {
      priors = learned;
      timesExpected += 1;
    },
    believeAnew: async (of) => {
      const anew = await quicks.ask(keyOf(of), () => goOn(of), { behind: true });
      return anew ?? wholes.ask(of, { behind: true });
    },
    onGiven: (listener) => void listeners.push(listener),
  };
}

function keyOf({ lifterId, lift, on }: LiftOnDay): string {
  return `${lifterId} ${lift} ${on}`;
}
