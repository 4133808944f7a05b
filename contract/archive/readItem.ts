import type { z } from 'zod';
import { beyondBounds, mostValues } from '#contract/json/beyondBounds.ts';
import { type Cut, Uncut } from '#contract/json/cutLists.ts';
import { kindNames } from '#contract/records/allKinds.ts';
import { mostTakenValues } from '#contract/records/takenPlan.ts';
import { issueProblem, type Problem } from '#contract/words/shapeProblem.ts';
import { archiveItems } from './archiveShape.ts';
import { jsonLine, lineAt } from './jsonLine.ts';

/** What is wrong with an archive, and the line on which it stands, as an editor counts it. */
export interface ArchiveProblem extends Problem {
  line: number;
}

export type Problems = { problems: [ArchiveProblem, ...ArchiveProblem[]] };

/** What is read of each list, by its name. */
export interface ListOf {
  shape: z.ZodType;
  mostValues: number;
  isHeld: boolean;
}

/** A plan, and about it what says whose it is. */
const mostPlanned = mostTakenValues + 100;

export const lists: ReadonlyMap<string, ListOf> = new Map([
  ...kindNames.map((kind) => [`records.${kind}`, held(archiveItems.records[kind]!)] as const),
  ['former', held(archiveItems.former)],
  ['prescriptions', { shape: archiveItems.prescriptions, mostValues: mostPlanned, isHeld: false }],
  ['takenPlans', { shape: archiveItems.takenPlans, mostValues: mostPlanned, isHeld: false }],
  ['sets', { shape: archiveItems.sets, mostValues, isHeld: false }],
]);

function held(shape: z.ZodType): ListOf {
  return { shape, mostValues, isHeld: true };
}

export function isOpened(path: readonly string[]): boolean {
  return path.length === 0 || (path.length === 1 && path[0] === 'records');
}

export function nameOf(path: readonly string[]): string {
  return path.join('.');
}

/** One entry of a list, or what is wrong in it. */
export function readItem(part: Cut, { shape, mostValues: most }: ListOf): { item: unknown } | Problems {
  const path = [...part.path, part.index!];
  const field = `${nameOf(part.path)}[${part.index}]`;
  const beyond = beyondBounds(part.text, most);
  if (beyond !== null) return oneProblem(field, `${field} ${beyond}; no more is taken.`, part.line);
  const parsed = parsedPart(part);
  const found = shape.safeParse(parsed);
  if (found.success) return { item: found.data };
  const input = path.reduceRight<unknown>((inside, step) => ({ [step]: inside }), parsed);
  const [first, ...others] = found.error.issues.map((issue) => ({
    ...issueProblem({ ...issue, path: [...path, ...issue.path] }, input),
    line: part.line - 1 + jsonLine(part.text, issue.path),
  }));
  return first ? { problems: [first, ...others] } : oneProblem(field, `${field} cannot be read.`, part.line);
}

function oneProblem(field: string, message: string, line: number): Problems {
  return { problems: [{ field, message, line }] };
}

export function parsedPart({ text, line }: Cut): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const at = line - 1 + lineAt(text, placeOf(error) ?? 0);
    throw new Uncut(`is not valid JSON at line ${at}`, at);
  }
}

/** Where the parser stopped, as far as it says so. */
function placeOf(error: unknown): number | null {
  const place = error instanceof SyntaxError ? /position (\d+)/.exec(error.message)?.[1] : undefined;
  return place === undefined ? null : Number(place);
}
