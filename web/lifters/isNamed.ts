import type { Lifter } from '#contract/records/lifters.ts';

/** Whether every word asked for begins a part of the name, whatever its accents. */
export function isNamed({ name }: Pick<Lifter, 'name'>, asked: string): boolean {
  const parts = plainWords(name);
  return plainWords(asked).every((word) => parts.some((part) => part.startsWith(word)));
}

function plainWords(text: string): string[] {
  const plain = text.normalize('NFD').replaceAll(/\p{Mark}/gu, '');
  return plain
    .toLowerCase()
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== '');
}
