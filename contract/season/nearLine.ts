import { type LineWords, lifterLine } from '#contract/paper/lifterLine.ts';
import { lineWords } from '#contract/paper/lineWords.ts';
import type { LifterLine } from '#contract/paper/RackSheetModel.ts';
import type { NearDay, NearWork } from '#contract/season/nearDay.ts';

type Units = Parameters<typeof lineWords>[2];

/** A near bar in the words of the Day screen, of somebody alone at the rack; the line is null where nothing could be worked out. */
export function nearLine(
  day: NearDay,
  work: NearWork,
  units: Units,
): { line: LifterLine | null; words: LineWords } {
  const words = lineWords(day, day.words, units);
  return { line: lifterLine(work.place, work, { place: null, isFirst: false }, words), words };
}
