import { useQuery } from '@tanstack/react-query';
import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { EstimateProgress } from '#contract/strength/strengthSummary.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

export interface BacktestState {
  report: BacktestReport | null;
  workedOutAt: string | null;
  upToDate: boolean;
  progress: EstimateProgress;
}

const askAgainMs = 2000;

/** How past meets would have been foretold; asked again until all of them are. */
export function useBacktest() {
  return useQuery({
    queryKey: [...clubKey, 'backtest'],
    queryFn: () => requestAgain<BacktestState>('/api/backtest'),
    refetchInterval: ({ state }) => (state.data?.upToDate === false ? askAgainMs : false),
  });
}
