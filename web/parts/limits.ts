import type { z } from 'zod';
import { type Field, fieldOf, shapeFields } from '#contract/records/fields.ts';

/** One field of a shape. */
export function fieldIn(shape: Record<string, z.ZodType>, name: string): Field {
  const schema = shape[name];
  if (schema === undefined) throw new Error(`The shape has no field ${name}.`);
  return fieldOf(name, schema);
}

/** What a field for a quantity takes, by the shape of what it fills in. */
export function quantityLimits({ nullable, least, most }: Field) {
  return { required: !nullable, minSi: least ?? undefined, maxSi: most ?? undefined };
}

/** What a field for a plain figure takes, likewise; its shape limits it at both ends. */
export function figureLimits({ name, least, most, isWhole }: Field) {
  if (least === null || most === null) throw new Error(`The shape must limit ${name} at both ends.`);
  return { min: least, max: most, whole: isWhole };
}

/** The same of every field of a shape of plain figures. */
export function figuresIn<Name extends string>(
  shape: Record<Name, z.ZodType>,
): Record<Name, ReturnType<typeof figureLimits>> {
  const limits = shapeFields(shape).map((field) => [field.name, figureLimits(field)]);
  return Object.fromEntries(limits) as Record<Name, ReturnType<typeof figureLimits>>;
}

/** What a field for a text or a date takes, likewise. */
export function textLimits({ nullable, least, most, isDate }: Field) {
  return { required: isDate ? !nullable : least !== null && least > 0, maxLength: most ?? undefined };
}
