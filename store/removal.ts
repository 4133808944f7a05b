import type { Kysely } from 'kysely';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { references } from '#contract/records/references.ts';
import type { Edit } from './commitChange.ts';
import { kindTable } from './kindTable.ts';
import type { Tables } from './schema.ts';

/** The edits that remove records and everything that belongs to them, at any depth. */
export async function removal(
  db: Kysely<Tables>,
  clubId: string,
  kind: KindName,
  ids: string[],
): Promise<Edit[]> {
  const edits = ids.map((id): Edit => ({ kind, id, after: null }));
  for (const { from, path } of references.filter(({ to, belongs }) => belongs && to === kind)) {
    const parts = (await kindTable(db, clubId, from).live()).filter((part) =>
      ids.includes(ownerOf(part, path)),
    );
    if (parts.length === 0) continue;
    const partIds = parts.map((part) => part.id);
    edits.push(...(await removal(db, clubId, from, partIds)));
  }
  return edits;
}

function ownerOf(part: RecordOf<KindName>, path: string): string {
  return Reflect.get(part, path) as string;
}
