import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { clubKey } from './useClub.ts';

/**
 * Listens for changes made on other devices and fetches the club again when one comes. Only while the page is looked at:
 * a browser opens six connections to one place at most, and six forgotten tabs that all listen would keep the seventh
 * from opening.
 */
export function useClubEvents(): void {
  const client = useQueryClient();
  useEffect(() => {
    const refresh = () => void client.invalidateQueries({ queryKey: clubKey });
    let events = document.hidden ? null : listenTo(refresh);
    const turn = () => {
      events?.close();
      events = document.hidden ? null : listenTo(refresh);
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

function listenTo(refresh: () => void): EventSource {
  const events = new EventSource('/api/events');
  events.addEventListener('change', refresh);
  return events;
}
