import type { ClubRecords } from '#contract/records/allKinds.ts';
import { nearLine } from '#contract/season/nearLine.ts';
import { dateText } from '#contract/words/dateText.ts';
import type { LifterNearDay } from './nearDaysOf.ts';
import { table } from './table.ts';

/** The near days of a season for the terminal: a line a bar, then what to take care of. */
export function nearDaysText(
  { club, lifter }: Pick<ClubRecords, 'club' | 'lifter'>,
  days: readonly LifterNearDay[],
  today: string,
): string {
  const units = { mass: club[0]?.massUnit ?? 'kg', length: club[0]?.lengthUnit ?? 'cm' } as const;
  const rows: string[][] = [];
  const said = new Set<string>();
  for (const { lifterId, day } of days) {
    const { name } = lifter.find(({ id }) => id === lifterId)!;
    for (const work of day.works) {
      const { line, words } = nearLine(day, work, units);
      if (line === null) {
        said.add(`${name}, ${dateText(day.date)}, ${work.title}: ${work.place.problem}`);
        continue;
      }
      rows.push([
        dateText(day.date),
        name,
        work.title,
        `${line.bar} ${units.mass}`,
        line.hung.length > 0 ? line.hung.join('; ') : 'no bands',
        `${line.bottom.load} and ${line.lockout.load}`,
      ]);
      if (line.hung.length > 0) said.add(words.say({ code: 'bandsUnderLoad' }));
      for (const { sentence } of [...line.cautions, ...line.assumed]) said.add(`${name}: ${sentence}`);
    }
    for (const title of day.noRack)
      said.add(`${title}: no rack of the club takes this lift, so no bar can be worked out.`);
  }
  return [
    `The coming days to bar and bands, worked out on what is known on ${dateText(today)}; each day is worked out anew when it comes`,
    rows.length === 0
      ? 'Nobody trains in the coming days.'
      : table(['Day', 'Who', 'Work', 'Bar', 'On it', `At bottom and lockout (${units.mass})`], rows),
    [...said].join('\n'),
  ].join('\n\n');
}
