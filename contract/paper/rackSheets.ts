import type { DayPlan, PlanGroup } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { PlanWords } from '#contract/day/planWords.ts';
import { speedAimWords } from './aimWords.ts';
import { cautionsByName } from './cautionsByName.ts';
import { evenParts } from './evenParts.ts';
import { rackLines } from './groupLines.ts';
import { isAssumption, type LineWords } from './lifterLine.ts';
import { noteFor } from './placeNotes.ts';
import type { LifterLine, RackSheet } from './RackSheetModel.ts';
import type { SinceThen } from './sinceThen.ts';

/** What a sheet says beside its lifters. */
export interface SheetWords
  extends Pick<PlanWords, 'club' | 'invented' | 'title' | 'note' | 'notes' | 'rackIds'> {
  date: string;
  madeBy: string;
  /** The day was changed after this was worked out. */
  changedSince: boolean;
  /** What else the paper must own up to. */
  since: readonly SinceThen[];
}

/**
 * The pages of a day: one for each rack of each group, or as many as `partsOf` says for the rack of that key, with its lifters
 * split evenly. How many are needed only the paper knows, which measures what stands on it.
 */
export function rackSheets(
  plan: DayPlan,
  { rackIds, notes, since, ...sheet }: SheetWords,
  words: LineWords,
  partsOf: (key: string) => number = () => 1,
): RackSheet[] {
  const pages = plan.groups.flatMap((group) =>
    inOrder(group.racks, rackIds).flatMap((rack) => {
      const sinceOf = (lifterId: string | null) =>
        since.flatMap((one) =>
          one.lifterId === lifterId && (one.groupId ?? group.groupId) === group.groupId ? [one.sentence] : [],
        );
      const lines = rackLines(group, rack.rackId, words).map((line) => ({
        ...line,
        note: noteFor(notes, group.groupId, line.lifterId),
        since: sinceOf(line.lifterId),
      }));
      if (lines.length === 0) return [];
      const key = `${group.groupId} ${rack.rackId}`;
      return evenParts(lines, partsOf(key)).map((lifters, _, { length: parts }) => ({
        ...sheet,
        key,
        groupId: group.groupId,
        parts,
        group: group.title,
        since: sinceOf(null),
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
