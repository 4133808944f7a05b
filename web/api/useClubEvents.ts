import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { refreshClub, refreshEstimates } from './refreshClub.ts';

/**
 * Listens for changes made on other devices and fetches the club again when one comes, and what rests on estimates when
 * these became better. Only while the page is looked at: a browser opens six connections to one place at most, and six
 * forgotten tabs that all listen would keep the seventh from opening.
 */
export function useClubEvents(): void {
  const client = useQueryClient();
  useEffect(() => {
    const refresh = () => void refreshClub(client);
    const listen = () => (document.hidden ? null : listenTo(refresh, () => refreshEstimates(client)));
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

function listenTo(refresh: () => void, better: () => void): EventSource {
  const events = new EventSource('/api/events');
  events.addEventListener('change', refresh);
  events.addEventListener('estimates', better);
  return events;
}
