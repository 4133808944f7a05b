import { useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { clubKey } from './useClub.ts';

/** Listens for changes made on other devices and fetches the club again when one comes. */
export function useClubEvents(): void {
  const client = useQueryClient();
  useEffect(() => {
    const events = new EventSource('/api/events');
    const refresh = () => void client.invalidateQueries({ queryKey: clubKey });
    events.addEventListener('change', refresh);
    return () => events.close();
  }, [client]);
}
