import { type QueryClient, skipToken, useQuery } from '@tanstack/react-query';
import type { Told, WorkTold } from '#contract/words/doing.ts';

const toldKey = (work: WorkTold['work'], of: string) => ['work', work, of] as const;

/** How far the server is with long work, as it last told; undefined before it told anything. */
export function useWorkTold(work: WorkTold['work'], of = ''): Told | undefined {
  return useQuery<Told>({ queryKey: toldKey(work, of), queryFn: skipToken }).data;
}

/** What the event stream told. */
export function hearWork(client: QueryClient, told: WorkTold): void {
  client.setQueryData(toldKey(told.work, told.of), told);
}

/** What was told of a run before is no news of the next one. */
export function forgetWork(client: QueryClient, work: WorkTold['work'], of = ''): void {
  client.setQueryData(toldKey(work, of), { done: 0, total: 0, doing: null });
}
