/** One thing in the club's calendar, whatever it is of: a training day, a meet. */
export interface CalendarEntry {
  /** Of the record it is of; never changes. */
  id: string;
  /** By the club's clock, 2026-11-25. */
  date: string;
  /** The whole day, whatever the club's usual hour is. */
  wholeDay: boolean;
  title: string;
  /** Lines of plain text; empty: none. */
  description: string;
  /** Grows with every change that readers must take over. */
  sequence: number;
  /** It was to be and will not be. */
  cancelled: boolean;
  /** The moment of its last change, ISO 8601 in UTC. */
  changedAt: string;
}
