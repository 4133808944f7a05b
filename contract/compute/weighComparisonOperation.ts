import { z } from 'zod';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { comparisonReport } from '#contract/comparison/comparisonReport.ts';
import { baselineDays, outcome } from '#contract/records/outcome.ts';
import { comparedSentences } from '#contract/words/comparedSentences.ts';
import type { Way } from '#core/comparison/drawWays.ts';
import { tellingOf, type WayTest, wayDifference } from '#core/comparison/wayDifference.ts';
import type { Effect } from '#core/evidence/contrast.ts';
import {
  asPercent,
  day,
  label,
  mostLifters,
  mostTests,
  refuseLate,
  refuseTwice,
  test,
  ways,
  weeks,
  weeksFrom,
} from './comparisonShape.ts';
import { fields } from './fields.ts';
import { operation } from './Operation.ts';

const drawn = fields({
  lifterId: label,
  name: label.optional(),
  way: label.describe('As drawn, whatever was then done'),
  pair: z.int().min(1).nullable().default(null),
  takenOutOn: day.nullable().default(null).describe('From this day on nothing counts'),
});
type Drawn = z.output<typeof drawn>;

/** Whose newest test is so many days older than anybody's had left by then (judgement: a test every four weeks is usual). */
const LEFT_DAYS = 28;

export const weighComparisonOperation = operation({
  name: 'weigh-comparison',
  summary:
    'What a drawn comparison of two ways showed: the difference of their gains with its range, everybody counted as drawn, and who left early.',
  inputSchema: fields({
    outcome,
    ways,
    startsOn: day,
    weeks,
    drawn: z.array(drawn).max(mostLifters),
    tests: z.array(fields(test)).max(mostTests),
  }).superRefine(({ startsOn, weeks, ways, drawn, tests }, context) => {
    refuseLate({ startsOn, weeks }, context);
    refuseTwice(drawn, 'drawn', context);
    const refuse = (path: (string | number)[], message: string) =>
      context.addIssue({ code: 'custom', path, message });
    drawn.forEach(({ way }, i) => {
      if (!ways.includes(way)) refuse(['drawn', i, 'way'], `it must be one of the ways (${ways.join(', ')})`);
    });
    const known = new Set(drawn.map(({ lifterId }) => lifterId));
    tests.forEach(({ lifterId }, i) => {
      if (!known.has(lifterId)) refuse(['tests', i, 'lifterId'], 'it must be one of those who were drawn');
    });
  }),
  outputSchema: comparisonReport.extend({ sentences: z.array(z.string()) }),
  run({ outcome, ways, startsOn, weeks, drawn, tests }) {
    const endsOn = dateOfDay(dayNumber(startsOn) + 7 * weeks);
    const earliest = dateOfDay(dayNumber(startsOn) - baselineDays[outcome]);
    const byId = new Map(drawn.map((one) => [one.lifterId, one]));
    const counting = tests.filter(({ lifterId, on }) => {
      const { takenOutOn } = byId.get(lifterId)!;
      return on >= earliest && on <= endsOn && (takenOutOn === null || on < takenOutOn);
    });
    const wayOf = ({ way }: Drawn) => ways.indexOf(way) as Way;
    const rows = counting.map(
      ({ lifterId, on, value_kg }): WayTest => ({
        lifterId,
        way: wayOf(byId.get(lifterId)!),
        // A test before the start is one at the start.
        week: Math.max(0, weeksFrom(startsOn, on)),
        lnValue: Math.log(value_kg),
      }),
    );
    const newest = newestOf(counting);
    const toldTo = isAtEnd(newest, endsOn) ? endsOn : latest(newest, startsOn);
    const found = wayDifference(rows, weeksFrom(startsOn, toldTo));
    const telling = tellingOf(rows);
    const report = {
      startsOn,
      endsOn,
      lastTestOn: newest,
      toldTo,
      ways: ways.map((way, i) => ({
        way,
        drawn: drawn.filter((one) => one.way === way).length,
        telling: telling[i]!,
        gain_percent: found === null ? null : inPercent(found.gains[i]!),
      })),
      difference_percent: found === null ? null : inPercent(found.difference),
      degreesOfFreedom: found?.difference.degreesOfFreedom ?? null,
      leftEarly: drawn.flatMap(({ lifterId, name, way, takenOutOn }) => {
        const lastOn = newestOf(counting.filter((one) => one.lifterId === lifterId));
        const takenOut = takenOutOn !== null && takenOutOn <= endsOn;
        const isBehind =
          newest !== null && (lastOn === null || dayNumber(newest) - dayNumber(lastOn) > LEFT_DAYS);
        return takenOut || isBehind ? [{ lifterId, name: name ?? lifterId, way, takenOut, lastOn }] : [];
      }),
    };
    return { ...report, sentences: comparedSentences(report) };
  },
});

/** Nobody knows how the rest of one that goes on will go. */
function isAtEnd(newest: string | null, endsOn: string): boolean {
  return newest !== null && dayNumber(endsOn) - dayNumber(newest) <= LEFT_DAYS;
}

function latest(newest: string | null, startsOn: string): string {
  return newest === null || newest < startsOn ? startsOn : newest;
}

function newestOf(tests: readonly { on: string }[]): string | null {
  return tests.reduce<string | null>(
    (newest, { on }) => (newest === null || on > newest ? on : newest),
    null,
  );
}

function inPercent({ value, low80, high80, low95, high95 }: Effect) {
  return {
    value: asPercent(value),
    low80: asPercent(low80),
    high80: asPercent(high80),
    low95: asPercent(low95),
    high95: asPercent(high95),
  };
}
