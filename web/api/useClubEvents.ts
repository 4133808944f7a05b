import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { ClubState } from '#contract/changes/clubState.ts';
import type { WorkTold } from '#contract/words/doing.ts';
import { refreshClub, refreshEstimates } from './refreshClub.ts';
import { clubKey } from './useClub.ts';
import { hearWork } from './useWorkTold.ts';

/**
 * Listens for changes made on other devices and fetches the club again when one comes, and what rests on estimates when
 * these became better. Only while the page is looked at: a browser opens six connections to one place at most, and six
 * forgotten tabs that all listen would keep the seventh from opening. Gives back why nothing can be saved now; null: all is well.
 */
export function useClubEvents(): string | null {
  const client = useQueryClient();
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    const refresh = () => void refreshClub(client);
    const listen = () =>
      document.hidden
        ? null
        : listenTo(
            client.getQueryData<ClubState>(clubKey),
            refresh,
            () => refreshEstimates(client),
            setTrouble,
            (told) => hearWork(client, told),
          );
    let events = listen();
    const turn = () => {
      events?.close();
      events = listen();
      // What changed while nobody looked was not heard.
      if (!document.hidden) refresh();
    };
    document.addEventListener('visibilitychange', turn);
    return () => {
      document.removeEventListener('visibilitychange', turn);
      events?.close();
    };
  }, [client]);
  return trouble;
}

/** From the change on at which the club stands that is held: what was done since is told at once. */
function listenTo(
  held: ClubState | undefined,
  refresh: () => void,
  better: () => void,
  say: (trouble: string | null) => void,
  hear: (told: WorkTold) => void,
): EventSource {
  const events = new EventSource(held ? `/api/events?after=${held.seq}` : '/api/events');
  events.addEventListener('change', refresh);
  events.addEventListener('estimates', better);
  events.addEventListener('work', ({ data }: MessageEvent<string>) => hear(JSON.parse(data) as WorkTold));
  events.addEventListener('trouble', ({ data }: MessageEvent<string>) => {
    say((JSON.parse(data) as { trouble: string | null }).trouble);
  });
  return events;
}
