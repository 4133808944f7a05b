import { useQuery } from '@tanstack/react-query';
import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import type { KeptCopies, KeptCopy } from '#contract/archive/keptCopy.ts';
import { request } from './request.ts';
import { clubKey } from './useClub.ts';

const path = '/api/copies';
export const copiesKey = [...clubKey, 'copies'] as const;

/** Where a copy is downloaded, as an archive. */
export function copyPath({ name }: KeptCopy): string {
  return `${path}/${encodeURIComponent(name)}`;
}

/** Copies of the club that are kept beside it; asked again whenever the club changes, and when the program took one by itself. */
export function useCopies() {
  return useQuery({
    queryKey: copiesKey,
    queryFn: ({ signal }) => request<KeptCopies>('GET', path, undefined, signal),
  });
}

export function takeCopy(): Promise<KeptCopy> {
  return request('POST', path);
}

/** What a copy holds, beside what the club holds now. */
export function lookIntoCopy(copy: KeptCopy): Promise<{ archive: ArchiveLook; here: ArchiveLook }> {
  return request('GET', `${copyPath(copy)}/look`);
}

/** Puts it in the place of the whole club. */
export function restoreCopy(copy: KeptCopy): Promise<unknown> {
  return request('POST', `${copyPath(copy)}/restore`);
}

export function removeCopy(copy: KeptCopy): Promise<void> {
  return request('DELETE', copyPath(copy));
}
