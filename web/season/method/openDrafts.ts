import type { Method } from '#contract/records/method.ts';
import type { DraftSteps } from './draftSteps.ts';

/** A method as it is being changed, on the page of another or of itself. */
export interface OpenDraft {
  /** What it began with; a copy has an id of its own. */
  first: Method;
  steps: DraftSteps<Method>;
}

/** By the page that each is changed on: what is half written outlives a look at another page. It is gone once it is kept or left. */
const open = new Map<string, OpenDraft>();

export function openDraft(page: string): OpenDraft | null {
  return open.get(page) ?? null;
}

/** Null: it was kept or left. Before the program is closed or read anew, the browser asks while something is half written. */
export function setOpenDraft(page: string, draft: OpenDraft | null): void {
  if (draft === null) open.delete(page);
  else open.set(page, draft);
  const isHalfWritten = [...open.values()].some(({ steps }) => steps.past.length > 0);
  if (isHalfWritten) addEventListener('beforeunload', askFirst);
  else removeEventListener('beforeunload', askFirst);
}

function askFirst(event: BeforeUnloadEvent): void {
  event.preventDefault();
}
