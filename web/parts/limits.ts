import { type Field, shapeFields } from '#contract/records/fields.ts';

/** One field of a shape. */
export function fieldIn(shape: Parameters<typeof shapeFields>[0], name: string): Field {
  const field = shapeFields(shape).find((one) => one.name === name);
  if (field === undefined) throw new Error(`The shape has no field ${name}.`);
  return field;
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

/** What a field for a text or a date takes, likewise. */
export function textLimits({ nullable, least, most, isDate }: Field) {
  return { required: isDate ? !nullable : least !== null && least > 0, maxLength: most ?? undefined };
}
