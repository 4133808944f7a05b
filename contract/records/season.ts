import { z } from 'zod';
import { group } from './day.ts';
import { kind, localDate, note, recordId } from './kind.ts';
import { method, startAsked } from './method.ts';

/** What planning ahead is made of: it feeds no day and no estimate by itself. */
const ofSeason = {
  belongsTo: {},
  uses: {},
  feeds: {},
  date: null,
  isFixed: false,
  sinceArchive: 6,
  filesAt: 'club',
} as const;

const title = z.string().trim().min(1).max(80);

/** A way of training as the club keeps it. Each version is a record of its own, so that a season goes on by the one that it was planned by. */
export const keptMethod = kind(
  'method',
  'method',
  { methodDocument: method },
  {
    ...ofSeason,
    many: 'methods',
    isFixed: true,
    ratherThanRemoved: 'let those seasons follow another method first',
  },
);
export type KeptMethod = z.infer<typeof keptMethod.shape>;

/** A meet that somebody of the club may lift at; past or ahead. */
export const meet = kind(
  'meet',
  'meet',
  { title, date: localDate, note },
  {
    ...ofSeason,
    many: 'meets',
    date: { field: 'date', isPast: false, knownFrom: false },
    ratherThanRemoved: 'give those who lift there another meet first',
  },
);
export type Meet = z.infer<typeof meet.shape>;

/** Training of some lifters by one method, from a day up to their meets. */
export const season = kind(
  'season',
  'season',
  { title, methodId: recordId, fromOn: localDate, note },
  {
    ...ofSeason,
    many: 'seasons',
    uses: { methodId: 'method' },
    date: { field: 'fromOn', isPast: false, knownFrom: false },
  },
);
export type Season = z.infer<typeof season.shape>;

/** The class of body mass that a lifter means to be in at a meet: up to so much and no more; null: the heaviest, which has no upper limit. */
export const classAtMeet = z.strictObject({
  meetId: recordId,
  upToKg: z.number().min(20).max(300).nullable(),
});

/** One lifter in one season, and the meets that this lifter trains for. Whoever goes to another meet or in another class changes this alone. */
export const seasonEntry = kind(
  'seasonEntry',
  'lifter in a season',
  {
    seasonId: recordId,
    lifterId: recordId,
    meetIds: z.array(recordId).min(1).max(4),
    /** Of a meet that is not named here nobody has said it. */
    classes: z.array(classAtMeet).max(4).default([]),
  },
  {
    ...ofSeason,
    many: 'lifters in seasons',
    belongsTo: { seasonId: 'season', lifterId: 'lifter' },
    uses: { 'meetIds[]': 'meet' },
    onlyOneOf: ['seasonId', 'lifterId'],
  },
  ({ meetIds, classes }) => {
    if (new Set(meetIds).size < meetIds.length)
      return { field: 'meetIds', allowed: 'it must name each meet once' };
    const inClass = classes.map(({ meetId }) => meetId);
    return new Set(inClass).size === inClass.length && inClass.every((id) => meetIds.includes(id))
      ? null
      : { field: 'classes', allowed: 'it must name meets of this lifter alone, and each once' };
  },
);
export type SeasonEntry = z.infer<typeof seasonEntry.shape>;

/** Days on which somebody does not train, or nobody does. */
export const absence = kind(
  'absence',
  'absence',
  {
    /** Null: the whole club is closed. */
    lifterId: recordId.nullable().default(null),
    fromOn: localDate,
    untilOn: localDate,
    why: z.string().trim().min(1).max(80),
  },
  {
    ...ofSeason,
    many: 'absences',
    belongsTo: { lifterId: 'lifter' },
    date: { field: 'fromOn', isPast: false, knownFrom: false },
  },
  ({ fromOn, untilOn }) =>
    untilOn < fromOn ? { field: 'untilOn', allowed: 'it must be no earlier than the first day' } : null,
);
export type Absence = z.infer<typeof absence.shape>;

/** What the coach wants instead of what the method asks of one group on one day; it stays, however often the season is planned again. */
export const plannedByHand = kind(
  'plannedByHand',
  'group set by hand',
  {
    seasonId: recordId,
    /** Null: for everybody of the season who has nothing of their own set. */
    lifterId: recordId.nullable().default(null),
    date: localDate,
    /** The group of the method. */
    askedId: method.shape.phases.element.shape.days.element.shape.groups.element.shape.id,
    /** Null: the group is left out. A field that is null stays as the method has it. */
    instead: z
      .strictObject({
        start: startAsked.nullable().default(null),
        aim: group.shape.aim.nullable().default(null),
        blocks: group.shape.blocks.nullable().default(null),
      })
      .nullable(),
    note,
  },
  {
    ...ofSeason,
    many: 'groups set by hand',
    belongsTo: { seasonId: 'season', lifterId: 'lifter' },
    date: { field: 'date', isPast: false, knownFrom: false },
    onlyOneOf: ['seasonId', 'lifterId', 'date', 'askedId'],
  },
  ({ instead }) =>
    instead !== null && Object.values(instead).every((set) => set === null)
      ? {
          field: 'instead',
          allowed: 'it must set a start, an aim or steps, or be null to leave the group out',
        }
      : null,
);
export type PlannedByHand = z.infer<typeof plannedByHand.shape>;
