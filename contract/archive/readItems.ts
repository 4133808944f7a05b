import type { z } from 'zod';
import { mostValues } from '#contract/json/beyondBounds.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { mostTakenValues } from '#contract/records/takenPlan.ts';
import { archiveFrame, archiveItems } from './archiveShape.ts';
import type { FormerRecord } from './formerRecord.ts';
import type { ArchiveContent } from './writeArchive.ts';

/**
 * What an archive holds, item by item, or its first faults: a long list in which everything is wrong would else take a thousand
 * times its own memory to be refused.
 */
export function readItems(
  archive: unknown,
  mostFaults: number,
): { content: ArchiveContent } | { issues: z.core.$ZodIssue[] } {
  const frame = archiveFrame.safeParse(archive);
  if (!frame.success) return { issues: frame.error.issues.slice(0, mostFaults) };
  const issues: z.core.$ZodIssue[] = [];
  const read = <Item>(
    path: string[],
    shape: z.ZodType<Item>,
    items: unknown[],
    most = mostValues,
  ): Item[] => {
    const good: Item[] = [];
    for (let i = 0; i < items.length && issues.length < mostFaults; i += 1) {
      const found = holdsMore(items[i], most) ? tooMuch(most) : shape.safeParse(items[i]);
      if (found.success) good.push(found.data);
      else
        issues.push(...found.error.issues.map((issue) => ({ ...issue, path: [...path, i, ...issue.path] })));
    }
    return good;
  };
  const { records, prescriptions, takenPlans, sets, former } = frame.data;
  const kinds = Object.entries(archiveItems.records).map(
    ([kind, shape]) => [kind, read(['records', kind], shape, records[kind]!)] as const,
  );
  const content = {
    records: Object.fromEntries(kinds) as unknown as ClubRecords,
    prescriptions: read(['prescriptions'], archiveItems.prescriptions, prescriptions),
    takenPlans: read(['takenPlans'], archiveItems.takenPlans, takenPlans, mostTakenValues),
    sets: read(['sets'], archiveItems.sets, sets),
    former: read(['former'], archiveItems.former, former) as FormerRecord[],
  };
  return issues.length > 0 ? { issues: issues.slice(0, mostFaults) } : { content };
}

function tooMuch(most: number): { success: false; error: { issues: z.core.$ZodIssue[] } } {
  const message = `it must hold no more than ${most} values`;
  return { success: false, error: { issues: [{ code: 'custom', path: [], input: null, message }] } };
}

/** Whether there are more values within a value; no more of them are looked at. */
function holdsMore(value: unknown, most: number): boolean {
  const inside = [value];
  for (let looked = 0; inside.length > 0; looked += 1) {
    if (looked + inside.length > most) return true;
    const next = inside.pop();
    if (typeof next === 'object' && next !== null) for (const one of Object.values(next)) inside.push(one);
  }
  return false;
}
