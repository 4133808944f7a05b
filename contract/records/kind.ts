import { z } from 'zod';

/**
 * One kind of record the club keeps: its name in paths and files, its word on screen, its shape.
 * Shapes are flat where a spreadsheet should hold them; nested lists travel as JSON in one CSV cell.
 */
export interface RecordKind<Name extends string = string, Shape extends z.ZodRawShape = z.ZodRawShape> {
  name: Name;
  /** The word a coach uses for one of them: "band pair". */
  word: string;
  /** All fields, id first; anything else is refused. */
  shape: z.ZodObject<Shape, z.core.$strict>;
}

/** Declares a kind. `fields` holds everything but the id, which the store gives. */
export function kind<const Name extends string, Shape extends z.ZodRawShape>(
  name: Name,
  word: string,
  fields: Shape,
): RecordKind<Name, Shape & { id: z.ZodString }> {
  const shape = z.strictObject({ id: z.string().min(1).max(64), ...fields });
  return { name, word, shape };
}

/** A label the club writes on its own gear. */
export const label = z.string().trim().min(1, 'needs a label').max(60);
/** A local calendar date, 2026-11-25. */
export const localDate = z.iso.date();
export const note = z.string().max(2000).default('');
/** A positive mass up to a tonne. */
export const massKg = z.number().positive().max(1000);
/** A height above the floor, 0 to 4 m. */
export const heightM = z.number().min(0).max(4);
export const recordId = z.string().min(1).max(64);
