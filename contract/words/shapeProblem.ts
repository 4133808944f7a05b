import type { z } from 'zod';
import { spelt } from './spelt.ts';

/** What is wrong with a document from outside: where, and one sentence with the value and what is allowed. */
export interface Problem {
  /** Path of the field, `groups[0].aim.targets[1].share`; empty for the document as a whole. */
  field: string;
  message: string;
}

/** The first problem of a refused document, in plain words. `input` is the document that the shape refused. */
export function shapeProblem(error: z.core.$ZodError, input: unknown): Problem {
  const [issue] = error.issues;
  return issue ? issueProblem(issue, input) : { field: '', message: 'The document is not valid.' };
}

/** One issue of a shape in plain words, the value as JSON or as `spellAs` writes it. */
export function issueProblem(
  issue: z.core.$ZodIssue,
  input: unknown,
  spellAs: (value: unknown, field: string) => string = spelt,
): Problem {
  if (issue.code === 'unrecognized_keys') {
    const field = joinPath([...issue.path, issue.keys[0] ?? '']);
    return { field, message: `${field} is not a field that is known here.` };
  }
  const field = joinPath(issue.path);
  const value = valueAt(input, issue.path);
  if (value === undefined)
    return { field, message: `${field || 'The document'} is missing; ${allowed(issue)}.` };
  return { field, message: `${field || 'The document'} is ${spellAs(value, field)}; ${allowed(issue)}.` };
}

/** `['groups', 0, 'aim']` becomes `groups[0].aim`. */
function joinPath(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? String(step) : `${text}.${String(step)}`;
  }, '');
}

/** What stands in a document at a path; undefined where the path ends early. */
export function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) => (typeof value === 'object' && value !== null ? Reflect.get(value, step) : undefined),
    input,
  );
}

function allowed(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'too_small':
      return `it must be ${bound(issue.origin, issue.inclusive ? 'at least' : 'more than', issue.minimum)}`;
    case 'too_big':
      return `it must be ${bound(issue.origin, issue.inclusive ? 'at most' : 'less than', issue.maximum)}`;
    case 'not_multiple_of':
      return `it must be a multiple of ${issue.divisor}`;
    case 'invalid_type':
      return `it must be ${typeWords[issue.expected] ?? `of type ${issue.expected}`}`;
    case 'invalid_value':
      return `it must be ${oneOf(issue.values)}`;
    case 'invalid_union':
      return `it must be ${oneOf('options' in issue ? (issue.options ?? []) : [])}`;
    case 'invalid_format':
      return formatWords[issue.format] ?? `it must be a valid ${issue.format}`;
    default:
      return issue.message;
  }
}

const formatWords: Partial<Record<string, string>> = {
  date: 'it must be a calendar date such as 2026-11-25',
  time: 'it must be a time of the day such as 18:30',
};

function bound(origin: string, words: string, limit: number | bigint): string {
  if (origin === 'string') return `${words} ${limit} ${limit === 1 ? 'character' : 'characters'} long`;
  if (origin === 'array') return `a list of ${words} ${limit}`;
  return `${words} ${limit}`;
}

function oneOf(values: readonly unknown[]): string {
  const spelled = values.map((value) => String(value));
  const last = spelled.pop() ?? 'one of the known values';
  return spelled.length === 0 ? last : `${spelled.join(', ')} or ${last}`;
}

const typeWords: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
};
