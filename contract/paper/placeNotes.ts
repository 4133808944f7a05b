import type { PlaceNote } from '#contract/day/planWords.ts';
import type { Day } from '#contract/records/day.ts';

/** The notes of a day, each on one line; lifters without one are left out. */
export function placeNotes(day: Pick<Day, 'groups'> | undefined): PlaceNote[] {
  return (day?.groups ?? []).flatMap(({ id, places }) =>
    places.flatMap(({ lifterId, note }) => {
      // An undo can bring back a day from before this field existed; then there is no note.
      const written = onOneLine(note ?? '');
      return written === '' ? [] : [{ groupId: id, lifterId, note: written }];
    }),
  );
}

export function noteFor(notes: readonly PlaceNote[], groupId: string, lifterId: string): string {
  return notes.find((one) => one.groupId === groupId && one.lifterId === lifterId)?.note ?? '';
}

/** As paper and terminal write what was typed on several lines. */
export function onOneLine(written: string): string {
  return written.trim().replace(/\s+/g, ' ');
}
