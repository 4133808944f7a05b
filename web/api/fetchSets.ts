import type { PartOfLog } from '#contract/log/withTouched.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { requestAgain } from './request.ts';

/** Which part of the log is asked for; dates are local, both ends count. */
export interface SetsAsked extends PartOfLog {
  /** That stand in the note of a set or of its training day. */
  words?: string;
}

export interface SetsAnswer {
  /** Oldest first, struck ones included. */
  sets: LoggedSet[];
  /** What gear was called that the club no longer has, by its id. */
  formerLabels: Record<string, string>;
}

/** A part of the log, page by page: the server answers others between two of them. */
export async function fetchSets(asked: object, signal: AbortSignal): Promise<SetsAnswer> {
  const all: SetsAnswer = { sets: [], formerLabels: {} };
  for (let after: string | null = ''; after !== null; ) {
    const query = new URLSearchParams({ ...asked, ...(after && { after }) });
    const page: SetsAnswer & { next: string | null } = await requestAgain(`/api/sets?${query}`, signal);
    // Pages go back in time.
    all.sets = [...page.sets, ...all.sets];
    Object.assign(all.formerLabels, page.formerLabels);
    after = page.next;
  }
  return all;
}
