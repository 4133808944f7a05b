import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import { counted } from './counted.ts';

type Stretch = CapacityReport['stretches'][number];
type Telling = Stretch & { told: NonNullable<Stretch['told']> };

/** At this share of the maximum a coach counts work capacity. */
const SHARE = 0.8;

/** Whether work capacity rose or fell over the season, and which stretches tell too little; `dateText` says a date as read. */
export function capacitySentences(report: CapacityReport, dateText: (date: string) => string): string[] {
  const { stretches } = report;
  if (stretches.length === 0)
    return [
      'No set of several reps is logged yet, nor how many reps were left after any set, so nothing can be said of work capacity.',
    ];
  const telling = stretches.filter((stretch): stretch is Telling => stretch.told !== null);
  return [...changeSentences(report, telling, dateText), ...leftOut(stretches, telling.length, dateText)];
}

function changeSentences(
  { change, better }: CapacityReport,
  telling: readonly Telling[],
  dateText: (date: string) => string,
): string[] {
  const [first, last] = [telling[0], telling[telling.length - 1]];
  if (first === undefined || last === undefined)
    return [
      'No twelve weeks of the season say enough about work capacity on their own. Hard sets of several reps would, with the reps left written down.',
    ];
  if (first === last || better === null)
    return [
      'Only one stretch of twelve weeks says enough about work capacity on its own: it takes two to see a change.',
    ];
  const [then, today] = [dateText(first.to), dateText(last.to)];
  if (change === 'cannotTell')
    return [
      `The log cannot tell whether work capacity rose or fell over the season: the twelve weeks that ended on ${then} and those that ended on ${today} may well be the same.`,
    ];
  const chance = Math.min(99, Math.round(100 * (change === 'rose' ? better : 1 - better)));
  const [has, now] = change === 'rose' ? ['risen', 'better'] : ['fallen', 'worse'];
  return [
    `Work capacity has ${has}: from about ${repsOf(first)} reps at ${100 * SHARE} % of the maximum in the twelve weeks that ended on ${then} to about ${repsOf(last)} in those that ended on ${today}. The chance that it is ${now} now is ${chance} %.`,
  ];
}

function leftOut(
  stretches: readonly Stretch[],
  telling: number,
  dateText: (date: string) => string,
): string[] {
  if (telling === 0) return [];
  const silent = stretches
    .filter(({ told }) => told === null)
    .map(({ to, setsThatTell }) => `on ${dateText(to)} (${setsText(setsThatTell)})`);
  if (silent.length === 0) return [];
  return [
    `Left out, because their sets say too little on their own: the twelve weeks that ended ${inARow(silent)}.`,
  ];
}

function setsText(count: number): string {
  return count === 0 ? 'no set' : counted(count, 'set');
}

function inARow(texts: readonly string[]): string {
  return texts.length < 2
    ? texts.join('')
    : `${texts.slice(0, -1).join(', ')} and ${texts[texts.length - 1]}`;
}

function repsOf({ told }: Telling): string {
  const median = told.reps.find(({ share }) => share === SHARE)?.belief.median ?? 0;
  return median.toFixed(1);
}
