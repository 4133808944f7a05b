import { allKinds, type KindName, type RecordOf } from '#contract/records/allKinds.ts';

/** A record as a coach would name it in a sentence: `band pair "Grey 44"`, `body mass of 2026-11-25`. */
export function recordName<K extends KindName>(kindName: K, record: RecordOf<K>): string {
  const word = allKinds[kindName].word;
  if ('label' in record) return `${word} "${record.label}"`;
  if ('name' in record) return `${word} "${record.name}"`;
  if ('faceMassKg' in record) return `${word} of ${record.faceMassKg} kg`;
  return `${word} of ${dateOf(record)}`;
}

function dateOf(record: object): string {
  const [, date] = Object.entries(record).find(([name]) => name === 'date' || name.endsWith('On')) ?? [];
  return String(date);
}
