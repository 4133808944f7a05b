import { speedAimWords } from '#contract/paper/aimWords.ts';
import { blocksWords } from '#contract/paper/groupSummary.ts';
import type { AimInTurn, PhaseOfMethod } from '#contract/records/method.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { counted } from '#contract/words/counted.ts';
import { percentToTenth } from '#contract/words/percent.ts';

/** A group of one week of the wave, in words. */
export interface MethodRowGroup {
  title: string;
  aim: string;
  sets: string;
  /** Null: it rotates through several. */
  start: string | null;
}

/** One week of a phase's wave: what each of its days asks for. */
export interface MethodRow {
  /** From 1. */
  week: number;
  days: { weekday: number; title: string; groups: MethodRowGroup[] }[];
}

/** The weeks of a phase as rows, one for each week of its wave. */
export function methodRows({ waveWeeks, days }: PhaseOfMethod): MethodRow[] {
  return Array.from({ length: waveWeeks }, (_, at) => ({
    week: at + 1,
    days: days.map(({ weekday, title, groups }) => ({
      weekday,
      title,
      groups: groups.map((group) => ({
        title: group.title,
        aim: aimOfWeekWords(group.aim, at),
        sets: blocksWords(ofWeek(group.blocks, at)),
        start: group.variants.length === 1 ? group.variants[0]!.title : null,
      })),
    })),
  }));
}

/** How long a phase may be, and where it keeps its weeks. */
export function lengthWords({
  leastWeeks,
  mostWeeks,
  waveWeeks,
  isRound,
  onlyAfterMeet,
}: PhaseOfMethod): string {
  const length =
    leastWeeks === mostWeeks ? counted(leastWeeks, 'week') : `${leastWeeks} to ${counted(mostWeeks, 'week')}`;
  return [
    waveWeeks === 1 || waveWeeks === mostWeeks ? `${length}.` : `${length}, in waves of ${waveWeeks}.`,
    ...(isRound ? ['Repeated where there is more time.'] : []),
    ...(onlyAfterMeet ? ['Only right after a meet.'] : []),
  ].join(' ');
}

/** What steps from wave to wave: of each group whose bands do, the shares in their order; and those of the strong. */
export function bandSteps({ days }: PhaseOfMethod): string[] {
  return days.flatMap(({ groups }) =>
    groups.flatMap(({ title, aim }) => {
      if (aim.by !== 'barAndBands') return [];
      const levels = aim.levels.map(
        ({ leastTimesBodyMass, bandShares }) =>
          `; from ${leastTimesBodyMass} body masses on ${shareList(bandShares)}`,
      );
      const steps = aim.bandShares.length > 1 ? ' from wave to wave' : '';
      return [`${title}: bands at lockout ${shareList(aim.bandShares)}${steps}${levels.join('')}.`];
    }),
  );
}

/** Which starts a group rotates through, and how long each of them rests. */
export function rotations({ days }: Pick<PhaseOfMethod, 'days'>): string[] {
  return days.flatMap(({ groups }) =>
    groups.flatMap(({ title, variants, restWeeks }) => {
      if (variants.length === 1) return [];
      const rest =
        restWeeks === 0 ? '' : `; each comes again after ${counted(restWeeks, 'week')} at the earliest`;
      return [`${title}, in turn: ${variants.map((one) => one.title).join(', ')}${rest}.`];
    }),
  );
}

function shareList(shares: readonly number[]): string {
  return shares.map(percentToTenth).join(', ');
}

/** What a group aims at in a week of the wave, from 0. */
export function aimOfWeekWords(aim: AimInTurn, week: number): string {
  switch (aim.by) {
    case 'percent':
      return aim.targets
        .map(
          ({ basis, shares }) =>
            `${percentToTenth(ofWeek(shares, week))} on ${basisWords.find(({ value }) => value === basis)!.word}`,
        )
        .join('; ');
    case 'barAndBands':
      return `${percentToTenth(ofWeek(aim.barShares, week))} on the bar, bands upon it`;
    case 'capability':
      return `${percentToTenth(ofWeek(aim.bottomShares, week))} of what the lifter can hold at the bottom, ${percentToTenth(ofWeek(aim.lockoutShares, week))} at lockout`;
    case 'speed':
      return speedAimWords({ by: 'speed', ...ofWeek(aim.zones, week), of: aim.of });
  }
}

/** The last entry stands for the weeks that follow. */
function ofWeek<Each>(list: readonly Each[], week: number): Each {
  return list[Math.min(week, list.length - 1)]!;
}
