import { allKinds, type ClubRecords, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { calledBy } from '#contract/records/labels.ts';
import type { CellReading } from './cells.ts';

/**
 * The id of the record that a cell names: by its id or, where only one is called so, by its label or name. `rackId` narrows
 * anchor points and hookups, whose labels are unique only within their rack.
 */
export function findReferred(club: ClubRecords, kind: KindName, cell: string, rackId: unknown): CellReading {
  const records: RecordOf<KindName>[] = club[kind];
  if (records.some(({ id }) => id === cell)) return { value: cell };
  const wanted = cell.trim().toLowerCase();
  const called = records.filter((record) => calledBy(record)?.toLowerCase() === wanted);
  const here = called.filter(
    (record) => typeof rackId !== 'string' || !('rackId' in record) || record.rackId === rackId,
  );
  const [found, second] = here;
  const word = allKinds[kind].word;
  const calling = kind === 'lifter' ? 'name' : 'label';
  if (!found) return { wrong: `The club has no ${word} with the id or ${calling} "${cell}".` };
  if (second) return { wrong: `More than one ${word} is called "${cell}"; write the id.` };
  return { value: found.id };
}
