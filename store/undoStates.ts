/** That a change took another back. */
export interface Taking {
  seq: number;
  undoes: number;
}

/** What follows for each change of which others were taken back, themselves taken back and so on. */
export interface UndoStates {
  /** Whether a change is taken back as things are. */
  isUndone(seq: number): boolean;
  /** Null for one that took nothing back. Else the change that was first made, and whether this takes it back or does it again. */
  back(seq: number): { of: number; again: boolean } | null;
  /** Those that take back, newest first. */
  takings: readonly Taking[];
}

/** By all changes of a log that took one back. */
export function undoStates(all: readonly Taking[]): UndoStates {
  const takings = all.toSorted((a, b) => b.seq - a.seq);
  const undoes = new Map(takings.map((taking) => [taking.seq, taking.undoes]));
  const undone = new Set<number>();
  // What takes back is newer than what it takes back: of the newest it is known first whether it holds.
  for (const taking of takings) if (!undone.has(taking.seq)) undone.add(taking.undoes);
  return {
    takings,
    isUndone: (seq) => undone.has(seq),
    back(seq) {
      let of = undoes.get(seq);
      if (of === undefined) return null;
      let again = false;
      for (let next = undoes.get(of); next !== undefined; next = undoes.get(of)) {
        of = next;
        again = !again;
      }
      return { of, again };
    },
  };
}
