import type { Method } from '#contract/records/method.ts';
import { mostAfterRise } from '#contract/season/mostAfterRise.ts';
import type { PlannedDay, PlannedGroup, PlannedWeek, SeasonWarning } from '#contract/season/seasonPlan.ts';
import { volumeCautions } from '#core/day/prilepin.ts';
import { grouped } from '#core/numeric/grouped.ts';
import { toThousandth } from './dayAim.ts';

/** What the weeks of a filled plan warn of together, beside what each day does: the method's own limits. */
export function seasonWarnings(method: Method, weeks: readonly PlannedWeek[]): SeasonWarning[] {
  return [
    ...heavyWeeks(method, weeks),
    ...rises(method, weeks),
    ...sameBands(method, weeks),
    ...startsTooSoon(method, weeks),
  ];
}

/** What a day warns of by itself: that it is closed, or its volume against the table. */
export function dayWarnings({ zoneShift }: Method, day: PlannedDay): SeasonWarning[] {
  const { date, title, closed } = day;
  if (closed !== null) return [{ code: 'closedDay', why: closed, date, title }];
  return [...grouped(day.groups.filter(isCounted), ({ lift }) => lift).values()].flatMap((groups) => {
    const cautions = volumeCautions(
      groups.flatMap(({ meanShare, blocks }) =>
        blocks.map(({ sets, reps, shareOfAim }) => ({
          share: toThousandth(meanShare! * shareOfAim - zoneShift),
          sets,
          reps,
        })),
      ),
    );
    return cautions.flatMap((caution): SeasonWarning[] => {
      if (caution.code !== 'volume') return [];
      const { reps, mostReps, zoneFrom, zoneTo } = caution;
      const zone = {
        zoneFrom: toThousandth(zoneFrom + zoneShift),
        zoneTo: zoneTo === null ? null : toThousandth(zoneTo + zoneShift),
        zoneShift,
      };
      const group = groups.map((one) => one.title).join(' and ');
      return [{ code: 'volume', group, reps, mostReps, ...zone, date, title }];
    });
  });
}

/**
 * The table is of straight sets of one lift in one session: a work-up to one heavy single is none. Lifts are those of one lifter below the first level of
 * strength. Too little is never warned of, since a deload, and the steps before the work, lie below the table on purpose.
 */
function isCounted({ meanShare, leastTimesBodyMass, work }: PlannedGroup): boolean {
  return meanShare !== null && leastTimesBodyMass === null && work !== 'maximal';
}

function heavyWeeks(
  { limits: { mostHeavyLiftsAWeek: most } }: Method,
  weeks: readonly PlannedWeek[],
): SeasonWarning[] {
  if (most === null) return [];
  return weeks.flatMap(({ monday, load: { heavyLifts: lifts } }): SeasonWarning[] =>
    lifts > most ? [{ code: 'heavyLifts', lifts, most, monday }] : [],
  );
}

/** A week after one that was cut short by a holiday or a meet is held against the fullest of the four before it. */
function rises({ limits: { mostRise: most } }: Method, weeks: readonly PlannedWeek[]): SeasonWarning[] {
  if (most === null) return [];
  return weeks.flatMap(({ monday, load: { lifts } }, at): SeasonWarning[] => {
    const before = Math.max(
      0,
      ...weeks.slice(Math.max(0, at - WEEKS_BACK), at).map(({ load }) => load.lifts),
    );
    return before > 0 && lifts > mostAfterRise(before, most)
      ? [{ code: 'rise', lifts, before, most, monday }]
      : [];
  });
}

const WEEKS_BACK = 4;

/** Once for each stretch: in the first week that is one too many. */
function sameBands(
  { limits: { mostWeeksOnOneBandShare: most } }: Method,
  weeks: readonly PlannedWeek[],
): SeasonWarning[] {
  if (most === null) return [];
  const stretches = new Map<string, { bandShare: number; weeks: number; week: number }>();
  return weeks.flatMap(({ monday, days }, week) =>
    days.flatMap(({ groups }) =>
      groups.flatMap(({ askedId, title: group, work, bandShare, leastTimesBodyMass }): SeasonWarning[] => {
        // A heavy single changes its variant instead.
        if (work !== 'speed' || bandShare === null || bandShare === 0 || leastTimesBodyMass !== null)
          return [];
        const before = stretches.get(askedId);
        const isSame = before?.bandShare === bandShare;
        if (isSame && before.week === week) return [];
        const now = { bandShare, weeks: isSame ? before.weeks + 1 : 1, week };
        stretches.set(askedId, now);
        return now.weeks === most + 1
          ? [{ code: 'sameBands', group, bandShare, weeks: now.weeks, most, monday }]
          : [];
      }),
    ),
  );
}

/** Told on the later of the two days. The turn of the variants never brings one too soon of itself. */
function startsTooSoon({ phases }: Method, weeks: readonly PlannedWeek[]): SeasonWarning[] {
  const isByHand = weeks.some(({ days }) => days.some(({ groups }) => groups.some(({ byHand }) => byHand)));
  if (!isByHand) return [];
  const last = new Map<string, { week: number; byHand: boolean }>();
  return weeks.flatMap(({ phaseId, days }, week) => {
    const asked = phases.find(({ id }) => id === phaseId)?.days.flatMap(({ groups }) => groups) ?? [];
    return days.flatMap(({ date, title, groups }) =>
      groups.flatMap(({ askedId, title: group, variantId, leastTimesBodyMass, byHand }): SeasonWarning[] => {
        const method = asked.find(({ id }) => id === askedId);
        const variant = method?.variants.find(({ id }) => id === variantId);
        // Levels of strength are the same work; a group with one start has nothing else to do.
        if (method === undefined || variant === undefined) return [];
        if (leastTimesBodyMass !== null || method.variants.length === 1) return [];
        const key = `${askedId} ${variantId}`;
        const before = last.get(key);
        last.set(key, { week, byHand });
        const { restWeeks } = method;
        // Where a restriction leaves few starts, nobody chose that they come so often.
        if (before === undefined || restWeeks === 0 || !(byHand || before.byHand)) return [];
        const weeksAgo = week - before.week;
        return weeksAgo > restWeeks
          ? []
          : [{ code: 'tooSoon', group, variant: variant.title, weeks: weeksAgo, restWeeks, date, title }];
      }),
    );
  });
}
