import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { AskedPlan, ClubSeason } from '#contract/season/clubSeason.ts';
import type { GearWarning } from '#contract/season/gearWarning.ts';
import { gearWarningSentences } from '#contract/season/gearWarningSentences.ts';
import { nearWeeksSentence } from '#contract/season/nearUntil.ts';
import { warningSentences } from '#contract/season/warningSentences.ts';
import { dateText } from '#contract/words/dateText.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import { classTexts } from '#reckon/season/classesAhead.ts';
import type { LifterNearDay } from './nearDaysOf.ts';
import { nearDaysText } from './nearDaysText.ts';
import { table } from './table.ts';

/** Seasons for the terminal: each plan with whose it is, its weeks, and what to look at; the near days by their seasons, null where none were asked for. */
export function seasonText(
  records: Pick<ClubRecords, 'club' | 'lifter' | 'bodyMass' | 'meet' | 'seasonEntry'>,
  seasons: readonly ClubSeason[],
  gear: readonly GearWarning[],
  near: readonly LifterNearDay[] | null,
  today: string,
): string {
  if (seasons.length === 0) return 'The club has no season yet: make one on the page Season.\n';
  const nameOf = (lifterId: string) => records.lifter.find(({ id }) => id === lifterId)!.name;
  const parts = seasons.map((season) => {
    const plans = season.plans.map((plan, at) => {
      const whose = season.lifters.filter((one) => one.plan === at).map((one) => nameOf(one.lifterId));
      return `${whose.join(', ')}\n\n${weeksOf(season, plan)}\n${lines(warningSentences(plan.warnings).map(({ sentence }) => sentence))}`;
    });
    const own = season.lifters.flatMap(({ lifterId, warnings }) =>
      warningSentences(warnings).map(({ sentence }) => `${nameOf(lifterId)}: ${sentence}`),
    );
    const classes = season.lifters.flatMap(({ entryId, lifterId }) =>
      classTexts(records, entryId, today).map((says) => `${nameOf(lifterId)}: ${says}`),
    );
    const days = near?.filter(({ seasonId }) => seasonId === season.seasonId);
    const ahead = days ? [nearDaysText(records, days, today)] : [];
    const weeks = nearWeeksSentence(records.club[0], season.method);
    return [
      `${season.title}, by "${season.method.title}"\n\n${weeks}`,
      ...plans,
      lines(classes),
      lines(own),
      ...ahead,
    ].join('\n\n');
  });
  const ahead =
    gear.length === 0
      ? 'Racks and bands are enough for every day that is planned.'
      : lines(gearWarningSentences(gear));
  return `${[...parts, `Racks and bands ahead\n\n${ahead}`].join('\n\n').replace(/\n{3,}/g, '\n\n')}\n`;
}

function weeksOf({ method }: ClubSeason, { weeks, meets }: AskedPlan): string {
  return table(
    ['Week of', 'Phase', 'Week', 'Lifts', 'Mean', 'From 90 %', ''],
    weeks.map((week) => [
      dateText(week.monday),
      method.phases.find(({ id }) => id === week.phaseId)?.title ?? 'open',
      week.weekOfPhase ?? '',
      week.load.lifts,
      week.load.meanShare === null ? '' : percentToTenth(week.load.meanShare),
      week.load.heavyLifts,
      week.meets.map((at) => `${meets[at]!.title}, ${dateText(meets[at]!.date)}`).join('; '),
    ]),
  );
}

function lines(sentences: readonly string[]): string {
  return sentences.join('\n');
}
