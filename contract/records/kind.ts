import { z } from 'zod';

/** What is worked out from records: a day's plan, a lifter's estimate. */
export type Answer = 'plan' | 'estimate';

/** Names of kinds by the field that holds the id of one, or by the place of that field. */
type KindsByField = Readonly<Record<string, string>>;

/** All that the house knows of a kind beside its shape; what needs a list of kinds asks here. */
export interface KindFacts<
  Field extends string = string,
  Owners extends KindsByField = KindsByField,
  Used extends KindsByField = KindsByField,
> {
  /** Many of them, where they are counted or their spreadsheet is offered: "band pairs". */
  many: string;
  /** The kind that it is part of, and goes with, by the field that names it. */
  belongsTo: Owners;
  /** Other records that it uses, which therefore must stay; places as in `references.ts`. */
  uses: Used;
  /** The fields that each answer rests on; `all`: all but the note. What is not named feeds nothing. */
  feeds: Partial<Record<Answer, 'all' | readonly Field[]>>;
  date: {
    field: Field;
    /** It is of what was measured, done or born, so that it never lies ahead. */
    isPast: boolean;
    /** The record was not known before that day. */
    knownFrom: boolean;
  } | null;
  /** A mistaken one is removed and entered anew, never changed. */
  isFixed: boolean;
  /** Of a kind that is fixed, what may be changed nevertheless. */
  mayChange?: readonly Field[];
  /** Fields that no two of the kind have alike, all of them together. */
  onlyOneOf?: readonly Field[];
  /** Version of the archive that first held it: in an older one there are none. */
  sinceArchive: number;
  /** Where its spreadsheet is offered: beside its own table, or among the files of the club. */
  filesAt: 'ownTable' | 'club';
  /** What a coach can do where one must stay, to end a sentence with. */
  ratherThanRemoved?: string;
}

/**
 * One kind of record the club keeps: its name in paths and files, its word on screen, its shape, what is known of it.
 * Shapes are flat where a spreadsheet should hold them; nested lists travel as JSON in one CSV cell.
 */
export interface RecordKind<
  Name extends string = string,
  Shape extends z.ZodRawShape = z.ZodRawShape,
  Owners extends KindsByField = KindsByField,
  Used extends KindsByField = KindsByField,
> {
  name: Name;
  /** The word a coach uses for one of them: "band pair". */
  word: string;
  /** All fields, id first; anything else is refused. */
  shape: z.ZodObject<Shape, z.core.$strict>;
  facts: KindFacts<string, Owners, Used>;
}

/**
 * Declares a kind. `fields` holds everything but the id, which the store gives; `wrongTogether` says which field cannot be
 * beside the others, and what would be allowed: "it must be ...".
 */
export function kind<
  const Name extends string,
  Shape extends z.ZodRawShape,
  const Owners extends KindsByField,
  const Used extends KindsByField,
>(
  name: Name,
  word: string,
  fields: Shape,
  facts: KindFacts<keyof Shape & string, Owners, Used>,
  wrongTogether?: (record: z.infer<z.ZodObject<Shape>>) => WrongTogether<keyof Shape & string> | null,
): RecordKind<Name, Shape & { id: z.ZodString }, Owners, Used> {
  const shape = z.strictObject({ id: z.string().min(1).max(64), ...fields });
  if (wrongTogether === undefined) return { name, word, shape, facts };
  const whole = shape.check(({ value, issues }) => {
    const wrong = wrongTogether(value as z.infer<z.ZodObject<Shape>>);
    if (wrong) issues.push({ code: 'custom', path: [wrong.field], message: wrong.allowed, input: value });
  });
  return { name, word, shape: whole, facts };
}

/** A field that cannot be as it is beside the others of its record. */
export interface WrongTogether<Field extends string = string> {
  field: Field;
  allowed: string;
}

/** A label the club writes on its own gear. */
export const label = z.string().trim().min(1, 'needs a label').max(60);
/** A local calendar date, 2026-11-25. */
export const localDate = z.iso.date();
/** A time of the day by the clock on the wall, to the minute: 18:30. */
export const timeOfDay = z.iso.time({ precision: -1 }).meta({ format: 'time' });
export const note = z.string().max(2000).default('');
/** A positive mass up to a tonne. */
export const massKg = z.number().positive().max(1000);
/** A height above the floor, 0 to 4 m. */
export const heightM = z.number().min(0).max(4);
export const recordId = z.string().min(1).max(64);
