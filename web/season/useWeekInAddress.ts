import { useSearchParams } from 'wouter';

/** A week of one lifter, as the address names it. */
export interface WeekAsked {
  lifterId: string;
  monday: string;
}

/** The open week stands in the address, both its words at once; each opened week is a step that the browser goes back. */
export function useWeekInAddress(): [WeekAsked | null, (asked: WeekAsked | null) => void] {
  const [search, setSearch] = useSearchParams();
  const lifterId = search.get('lifter');
  const monday = search.get('week');
  const set = (asked: WeekAsked | null) =>
    setSearch((now) => {
      const next = new URLSearchParams(now);
      next.delete('lifter');
      next.delete('week');
      if (asked) {
        next.set('week', asked.monday);
        next.set('lifter', asked.lifterId);
      }
      return next;
    });
  return [lifterId !== null && monday !== null ? { lifterId, monday } : null, set];
}
