import { z } from 'zod';
import { localDate, recordId } from '#contract/records/kind.ts';
import { shortDate } from '#contract/words/dayWords.ts';

/** What taking a week of a season puts on the training days, and what it leaves alone. */
export const weekTaking = z.strictObject({
  monday: localDate,
  days: z.array(
    z.strictObject({
      date: localDate,
      /** Null: a day that is still to be made. */
      dayId: recordId.nullable(),
      title: z.string(),
      groups: z.array(
        z.strictObject({
          title: z.string(),
          lifterIds: z.array(recordId),
          what: z.enum(['new', 'changed', 'gone', 'same']),
        }),
      ),
    }),
  ),
  left: z.array(
    z.strictObject({
      date: localDate,
      /** Null: the whole day. */
      group: z.string().nullable(),
      why: z.enum(['logged', 'edited', 'noRack', 'full']),
    }),
  ),
});
export type WeekTaking = z.infer<typeof weekTaking>;
export type LeftAlone = WeekTaking['left'][number];

/** What was left alone, and why. */
export function leftAloneSentence({ date, group, why }: LeftAlone): string {
  const where = group === null ? shortDate(date) : `${shortDate(date)}, ${group}`;
  switch (why) {
    case 'logged':
      return `${where}: sets are logged, so the day stays as it is.`;
    case 'edited':
      return `${where}: you changed this group yourself, so it stays as it is.`;
    case 'noRack':
      return `${where}: no rack takes this lift. Say on the gear screen which lifts a rack is for.`;
    case 'full':
      return `${where}: a day holds eight groups. Put some of this work on another day.`;
  }
}
