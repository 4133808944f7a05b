import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { clubKey } from './useClub.ts';

/**
 * Listens for changes made on other devices and fetches the club again when one comes, and what rests on estimates when
 * these became better. Only while the page is looked at: a browser opens six connections to one place at most, and six
 * forgotten tabs that all listen would keep the seventh from opening.
 */
export function useClubEvents(): void {
  const client = useQueryClient();
  useEffect(() => {
    const refresh = () => void client.invalidateQueries({ queryKey: clubKey });
    const refreshEstimates = () => {
      for (const part of restingOnEstimates) void client.invalidateQueries({ queryKey: [...clubKey, part] });
    };
    const listen = () => (document.hidden ? null : listenTo(refresh, refreshEstimates));
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
}

/** First words of the keys of queries that are answered from estimates. */
const restingOnEstimates = ['estimates', 'estimates-in-short', 'projection', 'capacity', 'moved', 'expected'];

function listenTo(refresh: () => void, refreshEstimates: () => void): EventSource {
  const events = new EventSource('/api/events');
  events.addEventListener('change', refresh);
  events.addEventListener('estimates', refreshEstimates);
  return events;
}
