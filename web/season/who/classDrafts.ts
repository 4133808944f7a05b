import type { SeasonEntry } from '#contract/records/season.ts';

/** A class as its fields hold it: its limit may still be missing while it is typed. */
export interface ClassDraft {
  way: 'unsaid' | 'upTo' | 'heaviest';
  upToKg: number | null;
}

export type ClassDrafts = Readonly<Record<string, ClassDraft>>;

/** Of a meet at which nobody said it. */
export const unsaid: ClassDraft = { way: 'unsaid', upToKg: null };

/** The drafts that a form begins with, by the meet. */
export function classDrafts(classes: SeasonEntry['classes']): ClassDrafts {
  return Object.fromEntries(
    classes.map(({ meetId, upToKg }) => [meetId, { way: upToKg === null ? 'heaviest' : 'upTo', upToKg }]),
  );
}

/** What is kept of the drafts, for these meets. */
export function saidClasses(drafts: ClassDrafts, meetIds: readonly string[]): SeasonEntry['classes'] {
  return meetIds.flatMap((meetId) => {
    const { way, upToKg } = drafts[meetId] ?? unsaid;
    return way === 'unsaid' ? [] : [{ meetId, upToKg: way === 'upTo' ? upToKg : null }];
  });
}
