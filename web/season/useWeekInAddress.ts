import { useSearchParams } from 'wouter';

/** A week of one lifter, by its Monday. */
export interface WeekAsked {
  lifterId: string;
  monday: string;
}

/** What the address names of it; null: nothing. */
export type WeekInAddress = { [Word in keyof WeekAsked]: string | null };

/** The open week stands in the address, both its words at once; each opened week is a step that the browser goes back. */
export function useWeekInAddress(): [WeekInAddress, (asked: WeekAsked | null) => void] {
  const [search, setSearch] = useSearchParams();
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
  return [{ lifterId: search.get('lifter'), monday: search.get('week') }, set];
}
