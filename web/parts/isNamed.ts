import type { Lifter } from '#contract/records/lifters.ts';

/** Whether every word asked for begins a part of the name or of a label, whatever its accents. */
export function isNamed({ name, labels }: Pick<Lifter, 'name' | 'labels'>, asked: string): boolean {
  const parts = plainWords([name, ...labels].join(' '));
  return plainWords(asked).every((word) => parts.some((part) => part.startsWith(word)));
}

function plainWords(text: string): string[] {
  const plain = text.normalize('NFD').replaceAll(/\p{Mark}/gu, '');
  return plain
    .toLowerCase()
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== '');
}
