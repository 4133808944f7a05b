import type { z } from 'zod';
import { allKinds, type KindName } from './allKinds.ts';

/** How a field is kept outside the program: as text, a number, a yes or no, or nested (travels as JSON text). */
export type FieldSort = 'text' | 'number' | 'truth' | 'nested';

export interface Field {
  name: string;
  sort: FieldSort;
  /** The field may be null: an empty cell. */
  nullable: boolean;
  /** The field may be left out: it has a default. */
  optional: boolean;
  /** The least that it may be, for a text the fewest letters; null: its shape says none. */
  least: number | null;
  /** The most, likewise. */
  most: number | null;
  isWhole: boolean;
  isDate: boolean;
}

/** The fields of a kind in the order of its shape, id first. The shape is the only place where they are listed. */
export function fieldsOf(kindName: KindName): Field[] {
  const known = cache.get(kindName);
  if (known) return known;
  const fields = shapeFields(allKinds[kindName].shape.shape);
  cache.set(kindName, fields);
  return fields;
}

/** The fields of any record in the order of its shape. */
export function shapeFields(shape: Record<string, z.ZodType>): Field[] {
  return Object.entries(shape).map(([name, schema]) => fieldOf(name, schema));
}

const cache = new Map<KindName, Field[]>();

interface Schema {
  def: { type: string; format?: string; innerType?: Schema };
  minValue?: number | null;
  maxValue?: number | null;
  isInt?: boolean;
  minLength?: number | null;
  maxLength?: number | null;
}

/** One field, by its name and shape. */
export function fieldOf(name: string, schema: z.ZodType): Field {
  let nullable = false;
  let optional = false;
  let inner = schema as Schema;
  while (inner.def.innerType) {
    nullable ||= inner.def.type === 'nullable';
    optional ||= inner.def.type === 'default';
    inner = inner.def.innerType;
  }
  const { minValue, maxValue, minLength, maxLength } = inner;
  const limits = { least: limit(minValue ?? minLength), most: limit(maxValue ?? maxLength) };
  const sort = sorts[inner.def.type] ?? 'nested';
  const isDate = inner.def.format === 'date';
  return { name, sort, nullable, optional, ...limits, isWhole: inner.isInt === true, isDate };
}

/** None where the shape only says how far a number can be counted. */
function limit(value: number | null | undefined): number | null {
  return value == null || Math.abs(value) >= Number.MAX_SAFE_INTEGER ? null : value;
}

const sorts: Record<string, FieldSort> = { string: 'text', enum: 'text', number: 'number', boolean: 'truth' };
