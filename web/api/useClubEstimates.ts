import { useQuery } from '@tanstack/react-query';
import type { EstimateProgress, StrengthSummary } from '#contract/strength/strengthSummary.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

interface ClubEstimates {
  estimates: StrengthSummary[];
  progress: EstimateProgress;
}

/** What is known of everybody's strength by now; looked at again while the server works on the rest. */
export function useClubEstimates(): ClubEstimates {
  const { data } = useQuery({
    queryKey: [...clubKey, 'estimates-in-short'],
    queryFn: () => requestAgain<ClubEstimates>('/api/estimates/all'),
    refetchInterval: ({ state }) => (state.data?.progress.running ? lookEveryMs : false),
  });
  return data ?? nothingYet;
}

/** Beside the news of better estimates: how many of everybody's are done by now. */
const lookEveryMs = 2000;
const nothingYet: ClubEstimates = { estimates: [], progress: { done: 0, total: 0, running: false } };
