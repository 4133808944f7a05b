import { useQuery } from '@tanstack/react-query';
import type { CalendarAddresses } from '#contract/calendarFile/calendarAddresses.ts';
import { request } from './request.ts';
import { clubKey } from './useClub.ts';

const path = '/api/calendar';
export const calendarKey = [...clubKey, 'calendar'] as const;

/** Where the calendar is downloaded: the club's, or a lifter's own. */
export function calendarPath(lifterId: string | null): string {
  return lifterId === null ? `${path}.ics` : `${path}.ics?lifterId=${encodeURIComponent(lifterId)}`;
}

/** Where telephones may read the calendar. */
export function useCalendar() {
  return useQuery({
    queryKey: calendarKey,
    queryFn: ({ signal }) => request<CalendarAddresses>('GET', path, undefined, signal),
  });
}

/** Makes other addresses; those given out before lead to nothing. */
export function renewCalendar(): Promise<CalendarAddresses> {
  return request('POST', `${path}/renew`);
}
