import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import type { ClubState } from '#contract/changes/clubState.ts';
import type { WorkTold } from '#contract/words/doing.ts';
import { newsTogether } from './newsTogether.ts';
import { refreshClub, refreshEstimates } from './refreshClub.ts';
import { clubKey } from './useClub.ts';
import { copiesKey } from './useCopies.ts';
import { hearWork } from './useWorkTold.ts';

/**
 * Listens for changes made on other devices and fetches the club again when one comes, what rests on estimates when these became
 * better, and the list of copies when one was taken. Only while the page is looked at: a browser opens six connections to one place at most, and six
 * forgotten tabs that all listen would keep the seventh from opening. Gives back why nothing can be saved now; null: all is well.
 */
export function useClubEvents(): string | null {
  const client = useQueryClient();
  const [trouble, setTrouble] = useState<string | null>(null);
  useEffect(() => {
    const hear = newsTogether<'change' | 'estimates'>(async (named) => {
      const withEstimates = named.has('estimates');
      if (named.has('change')) await refreshClub(client, { withEstimates });
      else refreshEstimates(client);
    });
    const hearAll = () => {
      hear('change');
      hear('estimates');
    };
    const listen = () =>
      document.hidden
        ? null
        : listenTo(client.getQueryData<ClubState>(clubKey), {
            change: () => hear('change'),
            estimates: () => hear('estimates'),
            joinedAgain: hearAll,
            copies: () => void client.invalidateQueries({ queryKey: copiesKey }),
            work: (told) => hearWork(client, told),
            trouble: setTrouble,
          });
    let events = listen();
    const turn = () => {
      events?.close();
      events = listen();
      // What changed while nobody looked was not heard.
      if (!document.hidden) hearAll();
    };
    document.addEventListener('visibilitychange', turn);
    return () => {
      document.removeEventListener('visibilitychange', turn);
      events?.close();
    };
  }, [client]);
  return trouble;
}

/** What is done with each kind of news. */
interface Hearing {
  change: () => void;
  estimates: () => void;
  /** The line was cut off meanwhile; what became better in that time was not told. */
  joinedAgain: () => void;
  copies: () => void;
  work: (told: WorkTold) => void;
  trouble: (trouble: string | null) => void;
}

/** From the change on at which the club stands that is held: what was done since is told at once. */
function listenTo(held: ClubState | undefined, hearing: Hearing): EventSource {
  const events = new EventSource(held ? `/api/events?after=${held.seq}` : '/api/events');
  events.addEventListener('open', () => events.addEventListener('open', hearing.joinedAgain), { once: true });
  events.addEventListener('change', hearing.change);
  events.addEventListener('estimates', hearing.estimates);
  events.addEventListener('copies', hearing.copies);
  events.addEventListener('work', ({ data }: MessageEvent<string>) => {
    hearing.work(JSON.parse(data) as WorkTold);
  });
  events.addEventListener('trouble', ({ data }: MessageEvent<string>) => {
    hearing.trouble((JSON.parse(data) as { trouble: string | null }).trouble);
  });
  return events;
}
