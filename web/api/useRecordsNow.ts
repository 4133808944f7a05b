import { useQueryClient } from '@tanstack/react-query';
import type { ClubState } from '#contract/changes/clubState.ts';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { clubKey } from './useClub.ts';

/** The records of a kind as they are at the moment of the call, which may be newer than what the screen was drawn with. */
export function useRecordsNow<K extends KindName>(kind: K): () => readonly RecordOf<K>[] {
  const client = useQueryClient();
  return () => client.getQueryData<ClubState>(clubKey)?.records[kind] ?? [];
}
