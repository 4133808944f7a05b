import { dayNumber } from '#contract/calendar/dayNumber.ts';
import type { Equipment, Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { massRange } from '#contract/season/farSentence.ts';
import type { MaximumInWeek } from '#contract/season/strengthAhead.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';
import { isStraight } from '#reckon/lifter/assembleCapability.ts';
import type { SeasonStrengthScene } from '#web/charts/SeasonStrengthScene.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import type { SeasonScene } from './seasonRows.ts';

/** What is known of one lift of a lifter whose season is shown. */
export interface KnownStrength {
  equipment: Equipment;
  /** Undefined: nothing is known yet, or it is not there yet. */
  estimate: Pick<StrengthEstimate, 'history'> | undefined;
  /** From this week on. */
  maxima: readonly MaximumInWeek[] | undefined;
  /** Every set of that lift, bests among them as the singles that they were. */
  sets: readonly LoggedSet[];
}

/** A day of the past: what the maximum was, in the lifter's own equipment. */
export interface MaximumThen {
  on: string;
  lowKg: number;
  middleKg: number;
  highKg: number;
}

/**
 * The course of the estimate up to today. It is kept for the raw bar; in equipment it is carried over by what the equipment adds to it today, as the
 * projection has it (assumption: it added as much then). Nothing until that is known: a raw figure would be taken for one in equipment.
 */
export function maximumThen({ equipment, estimate, maxima }: Omit<KnownStrength, 'sets'>): MaximumThen[] {
  const history = estimate?.history ?? [];
  const [last, now] = [history.at(-1), maxima?.[0]];
  if (last === undefined || (equipment !== 'raw' && now === undefined)) return [];
  const carry =
    equipment === 'raw' || now === undefined ? 1 : Math.sqrt(now.lowKg * now.highKg) / last.median;
  return history.map(({ on, low80, median, high80 }) => ({
    on,
    lowKg: carry * low80,
    middleKg: carry * median,
    highKg: carry * high80,
  }));
}

/** Straight bars of that equipment, each heavier than all before it. */
export function bestsSoFar(sets: readonly LoggedSet[], equipment: Equipment): LoggedSet[] {
  const made = sets
    .filter((set) => set.struckAt === null && set.made > 0 && set.equipment === equipment && isStraight(set))
    .toSorted((a, b) => a.doneOn.localeCompare(b.doneOn) || b.setup.barKg - a.setup.barKg);
  let mostKg = 0;
  return made.filter(({ setup }) => {
    if (setup.barKg <= mostKg) return false;
    mostKg = setup.barKg;
    return true;
  });
}

/** Which weeks a picture has, and its words. */
interface StrengthWeeks {
  title: string;
  firstMonday: string;
  weeks: number;
  today: string;
  meetsAt: readonly number[];
  mass: MassUnit;
}

/** The weeks of the picture of one lifter. */
export function weeksOfScene(
  { mondays, rows }: SeasonScene,
  given: { season: SeasonView; of: LifterSeason; lift: Lift; mass: MassUnit },
): StrengthWeeks {
  const { season, of, lift, mass } = given;
  return {
    title: `Maximum of ${of.lifter.name}, ${liftWord(lift)}`,
    firstMonday: mondays[0] ?? season.today,
    weeks: mondays.length,
    today: season.today,
    meetsAt: rows[0]?.meetsAt ?? [],
    mass,
  };
}

/** "163 (158 to 168) kg" of a week that was, "150 to 175 kg" of one ahead; empty: nothing can be said. */
export function maximumText(known: KnownStrength, monday: string, mass: MassUnit): string {
  const ahead = known.maxima?.find((week) => week.monday === monday);
  if (ahead !== undefined) return massRange(ahead, 1, mass);
  const then = maximumOn(maximumThen(known), daysLater(monday, 3));
  if (then === null) return '';
  const [low, middle, high] = [then.lowKg, then.middleKg, then.highKg].map((kg) =>
    Math.round(fromSi(kg, mass)),
  );
  return `${middle} (${low} to ${high}) ${mass}`;
}

/** On a day between two that are known as the line between them has it; null outside of all. */
function maximumOn(course: readonly MaximumThen[], day: string): MaximumThen | null {
  const next = course.findIndex(({ on }) => on >= day);
  const [before, after] = [course[next - 1], course[next]];
  if (after === undefined) return null;
  if (after.on === day || before === undefined) return after.on === day ? after : null;
  const share = (dayNumber(day) - dayNumber(before.on)) / (dayNumber(after.on) - dayNumber(before.on));
  const between = (of: 'lowKg' | 'middleKg' | 'highKg') => before[of] + share * (after[of] - before[of]);
  return { on: day, lowKg: between('lowKg'), middleKg: between('middleKg'), highKg: between('highKg') };
}

/** All of it in the weeks of a season as its picture has it. */
export function strengthInSeason(known: KnownStrength, season: StrengthWeeks): SeasonStrengthScene {
  const { firstMonday, weeks, today, mass, title, meetsAt } = season;
  const at = (on: string) => (dayNumber(on) - dayNumber(firstMonday) + 0.5) / 7;
  const inside = <One extends { at: number }>(ones: readonly One[]) =>
    ones.filter((one) => one.at >= 0 && one.at <= weeks);
  const shown = (kg: number) => fromSi(kg, mass);
  return {
    title,
    unit: mass,
    meetsAt,
    past: inside(
      maximumThen(known).map(({ on, lowKg, middleKg, highKg }) => ({
        at: at(on),
        low: shown(lowKg),
        middle: shown(middleKg),
        high: shown(highKg),
      })),
    ),
    ahead: inside(
      (known.maxima ?? []).flatMap(({ monday, lowKg, highKg }, week, { length }) => {
        const range = { low: shown(lowKg), high: shown(highKg) };
        // The week that goes on is known as of today; the last one holds to its end.
        const from = { at: Math.max(at(monday), at(today)), ...range };
        return week === length - 1 ? [from, { at: at(daysLater(monday, 6)), ...range }] : [from];
      }),
    ),
    bests: inside(
      bestsSoFar(known.sets, known.equipment).map(({ doneOn, setup, platform }) => ({
        at: at(doneOn),
        load: shown(setup.barKg),
        atMeet: platform,
      })),
    ),
  };
}
