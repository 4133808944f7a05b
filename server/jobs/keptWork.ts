import type { Tell, Told } from '#contract/words/doing.ts';
import { type AnswersOfWork, nothingKept } from './keptAnswers.ts';
import { markAs, markOf, writtenBasis } from './markOf.ts';
import { type HowAsked, newestFirst } from './newestFirst.ts';
import { newestKept } from './newestKept.ts';
import type { Waiting } from './waiting.ts';

/**
 * What takes long is worked out once for each state of what it rests on, and kept. What holds for everything that is:
 *
 * - Keyed: an answer has a key (which lift, which day) and a basis, what it rests on, compared part by part. One that is kept for the
 *   basis of now is given at once, and the same question asked again while it is worked on is the same run.
 * - In order: `width` runs at a time. Of those that wait the one asked for last comes first; what is asked for `behind` comes when
 *   nobody else waits. A run rests on things as they are when its turn comes, and as it was asked for last.
 * - Never older over newer: an answer begun before the one that is kept, and for another basis, goes to those who asked for it and
 *   is not kept.
 * - Kept: the newest answers of `most` keys, as long as the server runs, and where `keepIn` says so beyond that: what an answer rests
 *   on must then be said in words, numbers and other answers that are kept. A fault goes to who asked, and the next one asks anew.
 * - Cancelled: an asker may bring a signal that says when nobody waits there any more; without one it waits to the end. A run whose
 *   last asker has gone is dropped if its turn has not come. If it has, it goes on and is kept, or ends at once together with
 *   its thread where `endsWhenLeft`. A newer basis ends nothing that somebody waits for.
 * - Progress: how far a run has told to be.
 *
 * `work` runs a job of the table in jobs.ts, in a thread that threads.ts begins when first asked and ends when idle. Who knows a shorter
 * way to an answer, from the one before, takes it and lands what was found.
 */
export interface KeptWork<Of, Rest extends RestsOn, Answer> {
  ask(of: Of, how?: HowAsked): Promise<Answer>;
  /** What an answer rests on that is begun now. */
  stand(of: Of): Promise<Standing<Rest>>;
  /** The answer that is kept for this, as asked for now. */
  given(of: Of, now: Standing<Rest>): { answer: Answer } | undefined;
  /** The newest answer whatever it rests on. */
  newest(of: Of): Answer | undefined;
  /** Keeps an answer that was found in another way than by `work`, begun as things stood then, unless a newer one is kept. */
  land(of: Of, then: Standing<Rest>, answer: Answer): Answer;
  /** Of the run under way, or the last one. */
  progress(of: Of): Pick<Told, 'done' | 'total'>;
}

export interface RestsOn {
  basis: readonly unknown[];
}

/** What an answer rests on as it stood once; `at` grows with time. */
export type Standing<Rest extends RestsOn> = Rest & { at: number };

interface Kept<Answer> extends RestsOn {
  at: number;
  answer: Answer;
}

interface AtWork<Rest extends RestsOn, Answer> {
  run: Waiting<Answer>;
  standing: Promise<Standing<Rest>>;
  /** The newest standing that it was asked for since it began. */
  asNewAs: number;
  isOver: boolean;
}

interface WorkParts<Of, Rest extends RestsOn, Answer> {
  most: number;
  width: number;
  keyOf(of: Of): string;
  restsOn(of: Of): Rest | Promise<Rest>;
  work(of: Of, now: Rest, run: { signal: AbortSignal | undefined; tell: Tell }): Promise<Answer>;
  endsWhenLeft?: boolean;
  keepIn?: AnswersOfWork;
  /** False for an answer that was landed and is good enough only until `work` has found its own. */
  isWhole?(answer: Answer): boolean;
  /** Hears how far a run is, from its beginning. */
  onTold?(of: Of, told: Told): void;
  /** Hears of every answer that is given out, and what was kept before. */
  onGiven?(of: Of, given: Kept<Answer>, before: Answer | undefined): void;
}

export function keptWork<Of, Rest extends RestsOn, Answer>({
  most,
  width,
  keyOf,
  restsOn,
  work,
  endsWhenLeft = false,
  keepIn = nothingKept.of('', 0),
  isWhole = () => true,
  onTold = () => {},
  onGiven = () => {},
}: WorkParts<Of, Rest, Answer>): KeptWork<Of, Rest, Answer> {
  const queue = newestFirst<Answer>(width);
  const kept = newestKept<Kept<Answer>>(most);
  const progress = newestKept<{ done: number; total: number }>(most);
  const atWork = new Map<string, AtWork<Rest, Answer>>();
  let standings = 0;

  async function stand(of: Of): Promise<Standing<Rest>> {
    const at = ++standings;
    return { ...(await restsOn(of)), at };
  }

  async function ask(of: Of, how: HowAsked = {}): Promise<Answer> {
    const now = await stand(of);
    const known = given(of, now);
    if (known && isWhole(known.answer)) return known.answer;
    const key = keyOf(of);
    // Another may be begun while one is looked at.
    for (let one = atWork.get(key), seen: typeof one; one && one !== seen; one = atWork.get(key)) {
      const same = await joinable(one, now);
      if (same) return same.join(how.signal);
      seen = one;
    }
    return queue.ask(key, (run) => begin(of, run), how);
  }

  /** A run where it is for this very basis; its answer is then as new as this. */
  async function joinable(
    one: AtWork<Rest, Answer> | undefined,
    now: Standing<Rest>,
  ): Promise<Waiting<Answer> | undefined> {
    if (one === undefined || !areSame((await one.standing).basis, now.basis)) return undefined;
    if (one.isOver || (endsWhenLeft && one.run.left.aborted)) return undefined;
    one.asNewAs = Math.max(one.asNewAs, now.at);
    return one.run;
  }

  async function begin(of: Of, run: Waiting<Answer>): Promise<Answer> {
    const key = keyOf(of);
    const before = atWork.get(key);
    const one: AtWork<Rest, Answer> = { run, standing: stand(of), asNewAs: 0, isOver: false };
    atWork.set(key, one);
    try {
      const now = await one.standing;
      const known = given(of, now);
      if (known && isWhole(known.answer)) return known.answer;
      const same = await joinable(before, now);
      if (same) return await same.join(run.left);
      const tell: Tell = (done, total, doing) => {
        progress.set(key, { done, total });
        onTold(of, { done, total, doing: doing ?? null });
      };
      tell(0, 0);
      const answer = await work(of, now, { signal: endsWhenLeft ? run.left : undefined, tell });
      return land(of, { ...now, at: Math.max(now.at, one.asNewAs) }, answer);
    } finally {
      one.isOver = true;
      if (atWork.get(key) === one) atWork.delete(key);
    }
  }

  /** What is kept, whatever it rests on. */
  function recall(of: Of): Kept<Answer> | undefined {
    const key = keyOf(of);
    const known = kept.get(key);
    const found = known ? undefined : keepIn.find(key);
    if (!found) return known;
    const { basis, answer, mark } = found;
    if (mark !== null) markAs(answer as object, mark);
    const recalled = { basis, at: 0, answer: answer as Answer };
    kept.set(key, recalled);
    return recalled;
  }

  function given(of: Of, { basis, at }: Standing<Rest>): { answer: Answer } | undefined {
    const known = recall(of);
    if (!known || !areSame(known.basis, basis)) return undefined;
    return give(of, { ...known, at });
  }

  function land(of: Of, { basis, at }: Standing<Rest>, answer: Answer): Answer {
    const known = recall(of);
    const isOlder = known !== undefined && known.at > at && !areSame(known.basis, basis);
    if (isOlder) return answer;
    const one = give(of, { basis: writtenBasis(basis), at, answer });
    const mark = typeof answer === 'object' && answer !== null ? markOf(answer) : null;
    keepIn.put(keyOf(of), { basis: one.basis, answer, mark });
    return answer;
  }

  function give(of: Of, { basis, at, answer }: Kept<Answer>): Kept<Answer> {
    const before = kept.get(keyOf(of));
    const one = { basis, at: Math.max(at, before?.at ?? 0), answer };
    kept.set(keyOf(of), one);
    onGiven(of, one, before?.answer);
    return one;
  }

  return {
    ask,
    stand,
    given,
    newest: (of) => recall(of)?.answer,
    land,
    progress: (of) => progress.get(keyOf(of)) ?? { done: 0, total: 0 },
  };
}

function areSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  const written = writtenBasis(others);
  return some.length === others.length && writtenBasis(some).every((part, i) => Object.is(part, written[i]));
}
