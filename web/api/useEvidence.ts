import { useQuery } from '@tanstack/react-query';
import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** What the club's log says of its rules of thumb, every lifter in it; asked again whenever the club changes. */
export function useEvidence() {
  return useQuery({
    queryKey: [...clubKey, 'evidence'],
    queryFn: ({ signal }) => requestAgain<EvidenceReport>('/api/evidence', signal),
  });
}
