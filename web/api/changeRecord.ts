import { type Fields, isSame, mergeFields } from '#contract/changes/mergeFields.ts';
import type { RecordClash } from '#contract/changes/RecordClash.ts';
import type { KindName } from '#contract/records/allKinds.ts';
import { RequestError, request } from './request.ts';

/** Asks the coach what to do where somebody else changed the same; null: nothing for now. */
export type AskClash = (kind: KindName, clash: RecordClash) => Promise<'theirs' | 'yours' | null>;

interface Change {
  found: Fields & { id: string };
  wanted: Fields & { id: string };
}

/**
 * Sends what differs between a record as it was found and as it is wanted. Where somebody changed the same meanwhile the coach is
 * asked, and what is sent then begins from what was shown to them; with no answer the refusal is thrown on.
 */
export async function changeRecord<Answer>(
  kind: KindName,
  { found, wanted }: Change,
  ask: AskClash,
): Promise<Answer> {
  const names = Object.keys(wanted).filter((name) => name !== 'id' && !isSame(wanted[name], found[name]));
  // What is undefined is not sent; a field that was not there before was null.
  const only = (fields: Fields) => Object.fromEntries(names.map((name) => [name, fields[name] ?? null]));
  const path = `/api/records/${kind}/${encodeURIComponent(wanted.id)}`;
  const change = { found: only(found), wanted: only(wanted) };
  try {
    return await request<Answer>('PATCH', path, change);
  } catch (error) {
    if (!(error instanceof RequestError) || error.clash === null) throw error;
    const prefer = await ask(kind, error.clash);
    if (prefer === null) throw error;
    const theirs = error.clash.record;
    const { merged } = mergeFields(change.found, theirs, change.wanted, prefer);
    return changeRecord(kind, { found: theirs, wanted: { ...theirs, ...merged } }, ask);
  }
}
