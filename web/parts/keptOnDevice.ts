/** A word that this device keeps from one visit to the next, where its browser keeps anything at all. */
export function keptOnDevice<Word extends string>(
  name: string,
  words: readonly Word[],
): { read(): Word | null; write(word: Word | null): void } {
  const key = `rackwright.${name}`;
  return {
    read() {
      try {
        return words.find((word) => word === localStorage.getItem(key)) ?? null;
      } catch {
        return null;
      }
    },
    write(word) {
      try {
        if (word === null) localStorage.removeItem(key);
        else localStorage.setItem(key, word);
      } catch {
        // The choice then lasts as long as the page.
      }
    },
  };
}
