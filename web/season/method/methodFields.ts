import { createContext, use } from 'react';
import type { z } from 'zod';
import { fieldOf } from '#contract/records/fields.ts';
import type { MethodProblem } from '#contract/season/readMethod.ts';
import { figureLimits } from '#web/parts/limits.ts';

/** What is wrong with the method that is being changed, for the fields that show it. */
export const MethodFaults = createContext<readonly MethodProblem[]>([]);

/** Id, label and fault of the fields below one place of the method: `at` is its path, the empty text the method itself. */
export function useMethodFields(at: string) {
  const faults = use(MethodFaults);
  return (field: string | number, label: string) => {
    const id = placeIn(at, field);
    const fault = faults.find(({ place }) => place === id);
    return { id, label, error: fault ? `${label} ${fault.said}` : null };
  };
}

/** The path of a field or an entry below another path. */
export function placeIn(at: string, field: string | number): string {
  if (typeof field === 'number') return `${at}[${field}]`;
  return at === '' ? field : `${at}.${field}`;
}

/** What a field for a plain figure of the method takes, by its shape. */
export function limitsOf(shape: z.ZodType) {
  return figureLimits(fieldOf('figure', shape));
}
