import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Method } from '#contract/records/method.ts';
import type { KeptMethod } from '#contract/records/season.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { methodWord } from './methodWord.ts';

/** A way of training that a season can follow; `keptId` null: it comes with the program and is not kept by the club yet. */
export interface MethodChoice {
  value: string;
  word: string;
  method: Method;
  keptId: string | null;
}

/** Every version that the club keeps, and what comes with the program. */
export function everyMethod({ method: kept }: Pick<ClubRecords, 'method'>): MethodChoice[] {
  return [...kept.map(ofKept), ...shippedMethods.map(ofShipped)];
}

/** What the club keeps first, the newest version of each alone; then what comes with the program and is new to the club. */
export function methodChoices({ method: kept }: Pick<ClubRecords, 'method'>): MethodChoice[] {
  const newest = kept.filter(
    ({ methodDocument: one }) =>
      !kept.some(({ methodDocument: other }) => other.id === one.id && other.version > one.version),
  );
  return [
    ...newest.map(ofKept),
    ...shippedMethods.flatMap((shipped) => {
      const own = kept.filter(({ methodDocument }) => methodDocument.id === shipped.id);
      if (own.length === 0) return [ofShipped(shipped)];
      const isNewer = own.every(({ methodDocument }) => methodDocument.version < shipped.version);
      return isNewer ? [{ ...ofShipped(shipped), word: newerWord(shipped) }] : [];
    }),
  ];
}

function newerWord({ title, version }: Method): string {
  return `${title}, version ${version} (comes with the program)`;
}

function ofKept(kept: KeptMethod): MethodChoice {
  return { value: kept.id, word: methodWord(kept), method: kept.methodDocument, keptId: kept.id };
}

function ofShipped(method: Method): MethodChoice {
  return {
    value: `shipped-${method.id}`,
    word: `${method.title} (comes with the program)`,
    method,
    keptId: null,
  };
}
