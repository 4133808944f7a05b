import type { DayPlan, PlanGroup } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { speedAimWords } from './aimWords.ts';
import { cautionsByName } from './cautionsByName.ts';
import { evenParts } from './evenParts.ts';
import { rackLines } from './groupLines.ts';
import { isAssumption, type LineWords } from './lifterLine.ts';
import { noteFor, onOneLine, type PlaceNote } from './placeNotes.ts';
import type { LifterLine, RackSheet } from './RackSheetModel.ts';

/** What a sheet says beside its lifters. */
export interface SheetWords {
  club: string;
  invented: boolean;
  date: string;
  /** The day's title and note as they are now: they are no part of what was worked out. */
  title: string;
  note: string;
  /** What the coach wrote for one lifter, likewise. */
  notes: readonly PlaceNote[];
  madeBy: string;
  /** The day was changed after this was worked out. */
  changedSince: boolean;
  /** Racks in the order in which every screen shows them. */
  rackIds: readonly string[];
}

/**
 * The pages of a day: one for each rack of each group, or as many as `partsOf` says for the rack of that key, with its lifters
 * split evenly. How many are needed only the paper knows, which measures what stands on it.
 */
export function rackSheets(
  plan: DayPlan,
  { rackIds, title: called, note: written, notes, ...sheet }: SheetWords,
  words: LineWords,
  partsOf: (key: string) => number = () => 1,
): RackSheet[] {
  const title = onOneLine(called);
  const note = onOneLine(written);
  const pages = plan.groups.flatMap((group) =>
    inOrder(group.racks, rackIds).flatMap((rack) => {
      const lines = rackLines(group, rack.rackId, words).map((line) => ({
        ...line,
        note: noteFor(notes, group.groupId, line.lifterId),
      }));
      if (lines.length === 0) return [];
      const key = `${group.groupId} ${rack.rackId}`;
      return evenParts(lines, partsOf(key)).map((lifters, _, { length: parts }) => ({
        ...sheet,
        key,
        groupId: group.groupId,
        parts,
        title,
        note,
        group: group.title,
        rack: rack.label,
        unit: words.mass,
        work: workText(group, rack.rackId),
        lifters,
        cautions: cautionSentences(group, lifters, words),
        assumed: assumptionSentences(lifters),
      }));
    }),
  );
  return pages.map((page, index) => ({ ...page, page: index + 1, pages: pages.length }));
}

function inOrder(racks: PlanGroup['racks'], rackIds: readonly string[]): PlanGroup['racks'] {
  return racks.toSorted((a, b) => rackIds.indexOf(a.rackId) - rackIds.indexOf(b.rackId));
}

function workText(group: PlanGroup, rackId: string): string {
  const rack = group.racks.find((candidate) => candidate.rackId === rackId);
  const aim = group.aim.by === 'speed' ? ` Aim: ${speedAimWords(group.aim)}.` : '';
  if (rack === undefined || rack.changes === 0) return `${rack?.bar ?? ''}.${aim}`;
  return `${rack.bar}.${aim} Pairs changed each round: ${rack.changes}, about ${Math.round(rack.handlingMinutes)} min.`;
}

/** What all must know first, then what one lifter must know, by name. */
function cautionSentences(group: PlanGroup, lifters: readonly LifterLine[], words: LineWords): string[] {
  const bands: PlanCaution[] = lifters.some((line) => line.hung.length > 0)
    ? [{ code: 'bandsUnderLoad' }]
    : [];
  const general = [...bands, ...group.cautions.filter((caution) => !isAssumption(caution))].map(words.say);
  return [...new Set(general), ...cautionsByName(lifters, (line) => line.cautions)];
}

function assumptionSentences(lifters: readonly LifterLine[]): string[] {
  return cautionsByName(lifters, (line) => line.assumed);
}
