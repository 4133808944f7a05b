/** Whether every word asked for begins a word of what is written of a thing (its name, label, note), whatever the accents. */
export function isFound(texts: readonly string[], asked: string): boolean {
  const words = texts.flatMap(plainWords);
  return plainWords(asked).every((word) => words.some((part) => part.startsWith(word)));
}

function plainWords(text: string): string[] {
  const plain = text.normalize('NFD').replaceAll(/\p{Mark}/gu, '');
  return plain
    .toLowerCase()
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== '');
}
