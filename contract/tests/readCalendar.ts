import ICAL from 'ical.js';

/** One event as another program reads it. */
export interface ReadEvent {
  uid: string;
  sequence: number;
  status: string;
  title: string;
  description: string;
  /** Of a whole day its date, else the instant in UTC. */
  start: string;
  end: string;
  /** As it stands in the file. */
  wallTime: string;
  changedAt: string;
}

/** A calendar file as an independent library reads it (ical.js), events in their order; time zones by the rules in the file alone. */
export function readCalendar(text: string): { zones: string[]; events: ReadEvent[] } {
  const calendar = new ICAL.Component(ICAL.parse(text));
  const zones = calendar.getAllSubcomponents('vtimezone');
  return {
    zones: zones.map((zone) => String(zone.getFirstPropertyValue('tzid'))),
    events: calendar.getAllSubcomponents('vevent').map((component) => {
      const event = new ICAL.Event(component);
      const { startDate, endDate } = event;
      return {
        uid: event.uid,
        sequence: Number(component.getFirstPropertyValue('sequence')),
        status: String(component.getFirstPropertyValue('status')),
        title: event.summary,
        description: event.description ?? '',
        start: momentOf(startDate),
        end: momentOf(endDate),
        wallTime: startDate.toString(),
        changedAt: String(component.getFirstPropertyValue('last-modified')),
      };
    }),
  };
}

function momentOf(time: ICAL.Time): string {
  return time.isDate ? time.toString() : new Date(time.toUnixTime() * 1000).toISOString();
}
