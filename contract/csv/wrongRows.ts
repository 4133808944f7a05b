import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import { faultsOf } from '#contract/records/faultsOf.ts';
import { asCsvProblem } from './asCsvProblem.ts';
import type { CsvProblem } from './CsvProblem.ts';
import type { ReadRow } from './readRow.ts';

/** Lines that cannot be, by themselves or beside each other and the records that the file leaves as they are. */
export function wrongRows<K extends KindName>(
  kind: K,
  rows: readonly ReadRow<K>[],
  club: ClubRecords,
  today: string,
): CsvProblem[] {
  const [inFile, known] = [new Map(rows.map(({ record }) => [record.id, record])), knownBy(kind, club)];
  const untouched = club[kind].filter(({ id }) => !inFile.has(id));
  const asItWillBe = { ...club, [kind]: [...untouched, ...inFile.values()] };
  const ids = new Set<string>();
  return rows.flatMap(({ line, record }) => {
    const isTwice = ids.has(record.id);
    ids.add(record.id);
    if (isTwice)
      return [{ line, column: 'id', message: `The id "${record.id}" appears twice in this file.` }];
    return faultsOf(kind, record, known.get(record.id) ?? null, asItWillBe, today).map((fault) =>
      asCsvProblem(kind, line, fault),
    );
  });
}

function knownBy<K extends KindName>(kind: K, club: ClubRecords): Map<string, RecordOf<K>> {
  return new Map(club[kind].map((record) => [record.id, record]));
}
