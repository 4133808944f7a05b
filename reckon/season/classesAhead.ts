import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { notOfAge } from '#contract/records/notOfAge.ts';
import type { ClassAhead } from '#contract/season/classAhead.ts';
import { classSentences } from '#contract/season/classSentences.ts';
import type { ClassOfLifter } from '#contract/season/clubSeason.ts';
import { compareText } from '#core/numeric/compareText.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { lastWeighing } from '#reckon/lifter/lastWeighing.ts';

type Entry = Pick<RecordOf<'seasonEntry'>, 'lifterId' | 'classes'>;

/** The classes that were said of a lifter in a season, in the order of the meets. */
export function classesOf(
  { meet }: Pick<ClubRecords, 'meet'>,
  { classes }: Pick<Entry, 'classes'>,
): ClassOfLifter[] {
  return classes
    .map(({ meetId, upToKg }) => {
      const { title, date } = recordById({ meet }, 'meet', meetId);
      return { meetId, title, date, upToKg };
    })
    .toSorted((a, b) => compareText(a.date, b.date));
}

/** Those of the meets that are still to come, with the last weighing; two seasons that say the same of one meet say it once. */
export function classesAhead(
  records: Pick<ClubRecords, 'meet' | 'bodyMass' | 'lifter'>,
  entries: readonly Entry[],
  today: string,
): ClassAhead[] {
  const ahead = entries.flatMap((entry) =>
    classesOf(records, entry)
      .filter(({ date }) => date >= today)
      .map((one): ClassAhead => {
        const weighed = lastWeighing(records, entry.lifterId, today);
        const { bornOn } = recordById(records, 'lifter', entry.lifterId);
        return {
          ...one,
          weighed: weighed && { takenOn: weighed.takenOn, massKg: weighed.massKg },
          notOfAge: notOfAge(bornOn, today),
        };
      }),
  );
  return [...new Map(ahead.map((one) => [`${one.meetId} ${one.upToKg}`, one])).values()];
}

/** The same of one entry, each as a text for who has no screen: in the unit that the club weighs in. */
export function classTexts(
  records: Pick<ClubRecords, 'club' | 'meet' | 'bodyMass' | 'lifter' | 'seasonEntry'>,
  entryId: string,
  today: string,
): string[] {
  const entries = records.seasonEntry.filter(({ id }) => id === entryId);
  return classesAhead(records, entries, today).map((ahead) => {
    const { says, caution } = classSentences(ahead, records.club[0]?.massUnit ?? 'kg');
    return caution === null ? says : `${says} ${caution}`;
  });
}
