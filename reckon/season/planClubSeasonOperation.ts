import { z } from 'zod';
import { operation } from '#contract/compute/Operation.ts';
import { allKinds, type ClubRecords, type KindName, kindNames } from '#contract/records/allKinds.ts';
import { faultsOf } from '#contract/records/faultsOf.ts';
import { localDate, recordId } from '#contract/records/kind.ts';
import { method } from '#contract/records/method.ts';
import { clubSeason as clubSeasonShape } from '#contract/season/clubSeason.ts';
import { gearWarningSentences } from '#contract/season/gearWarningSentences.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { warningSentences } from '#contract/season/warningSentences.ts';
import { classTexts } from './classesAhead.ts';
import { clubSeason } from './clubSeason.ts';
import { gearAhead } from './gearAhead.ts';

type ListShape = z.ZodDefault<z.ZodArray<z.ZodType>>;

/** The club as `GET /api/club` and an archive have it; kinds that are left out have none. */
const clubRecords = z.strictObject(
  Object.fromEntries(
    kindNames.map((kind) => [kind, z.array(allKinds[kind].shape as z.ZodType).default([])]),
  ) as Record<KindName, ListShape>,
);

export const planClubSeasonOperation = operation({
  name: 'plan-club-season',
  summary:
    "A season from a club's records and a method: everybody's weeks, days and groups, what to look at, and where racks and bands do not do.",
  inputSchema: z
    .strictObject({
      records: clubRecords.describe('As GET /api/club answers; what is left out is empty'),
      seasonId: recordId.describe('Which season of the records; who is in it and the meets stand there'),
      method: method.optional().describe("A whole method in the place of the season's own"),
      shipped: z
        .enum(shippedMethods.map(({ id }) => id))
        .optional()
        .describe('Instead of it: one that comes with the program, by its id'),
      today: localDate.describe('Restrictions and gear are looked at from this day on'),
    })
    .check(({ value, issues }) => {
      const refuse = (path: PropertyKey[], message: string, input: unknown) =>
        issues.push({ code: 'custom', path, message, input });
      if (value.method !== undefined && value.shipped !== undefined)
        refuse(['shipped'], 'it must be left out beside a method', value.shipped);
      const records = value.records as ClubRecords;
      for (const kind of kindNames)
        for (const [at, record] of records[kind].entries())
          for (const { field, message } of faultsOf(kind, record, null, records, null))
            refuse(['records', kind, at, ...stepsOf(field)], allowedBy(message), record);
      if (records.club.length !== 1)
        refuse(['records', 'club'], 'it must be a list of one club', records.club);
      if (records.season.every(({ id }) => id !== value.seasonId))
        refuse(['seasonId'], 'it must be the id of one of the seasons in the records', value.seasonId);
    }),
  outputSchema: clubSeasonShape.extend({
    /** In words, in the order of their days: of everybody with that plan, of one lifter, or of the gear of all seasons. */
    says: z.array(
      z.strictObject({ plan: z.int().nullable(), lifterId: recordId.nullable(), says: z.string() }),
    ),
  }),
  run({ records: given, seasonId, method: own, shipped, today }) {
    const records = byMethod(
      given as ClubRecords,
      seasonId,
      own ?? shippedMethods.find(({ id }) => id === shipped),
    );
    const season = clubSeason(records, seasonId, today);
    return {
      ...season,
      says: [
        ...season.plans.flatMap(({ warnings }, plan) =>
          warningSentences(warnings).map(({ sentence }) => ({ plan, lifterId: null, says: sentence })),
        ),
        ...season.lifters.flatMap(({ entryId, lifterId }) =>
          classTexts(records, entryId, today).map((says) => ({ plan: null, lifterId, says })),
        ),
        ...season.lifters.flatMap(({ lifterId, warnings }) =>
          warningSentences(warnings).map(({ sentence }) => ({ plan: null, lifterId, says: sentence })),
        ),
        ...gearWarningSentences(gearAhead(records, today)).map((says) => ({
          plan: null,
          lifterId: null,
          says,
        })),
      ],
    };
  },
});

/** `setup.bands[1].hookupId` as the steps of a path. */
function stepsOf(field: string): PropertyKey[] {
  return field
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** What is allowed, of a sentence that has named field and value before; the refusal names them itself. */
function allowedBy(message: string): string {
  return message.replace(/^[^;]*; /, '').replace(/\.$/, '');
}

/** The records with that season by another method; what its groups were set to by hand stays, and is named where it has no place any more. */
function byMethod(
  records: ClubRecords,
  seasonId: string,
  document: z.output<typeof method> | undefined,
): ClubRecords {
  if (document === undefined) return records;
  const id = 'the method that came along';
  return {
    ...records,
    method: [...records.method, { id, methodDocument: document }],
    season: records.season.map((season) => (season.id === seasonId ? { ...season, methodId: id } : season)),
  };
}
