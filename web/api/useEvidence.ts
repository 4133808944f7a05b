import { useQuery, useQueryClient } from '@tanstack/react-query';
import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';
import { forgetWork } from './useWorkTold.ts';

/** What the club's log says of its rules of thumb, every lifter in it, or those with a label alone; asked again whenever the club changes. */
export function useEvidence(label: string) {
  const evidenceKey = [...clubKey, 'evidence', label];
  const path = label === '' ? '/api/evidence' : `/api/evidence?${new URLSearchParams({ label })}`;
  const client = useQueryClient();
  const query = useQuery({
    queryKey: evidenceKey,
    queryFn: ({ signal }) => {
      forgetWork(client, 'evidence');
      return requestAgain<EvidenceReport>(path, signal);
    },
  });
  return {
    report: query.data,
    error: query.error,
    isAsked: query.isFetching,
    /** Ends the work under way where nobody else waits for it; what was known before stays. */
    stop: () => void client.cancelQueries({ queryKey: evidenceKey }),
    askAgain: () => void query.refetch(),
  };
}
