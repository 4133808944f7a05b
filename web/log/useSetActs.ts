import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { useUndo } from '#web/api/useUndo.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { givenAgain } from '#web/setup/setDraft.ts';

/** What can be done to sets on record from their line, each told with its undo. */
export function useSetActs() {
  const writer = useSetWriter();
  const undo = useUndo();
  const say = useToast();
  const fail = (error: Error) => say(error.message);
  return {
    busy: writer.busy,
    /** Strikes them, in one step. */
    strike: async (sets: readonly LoggedSet[], what: string) => {
      try {
        const seq = await writer.correctAll(sets.map(({ id }) => ({ id, set: null })));
        say(`Struck ${what}.`, () => undo(seq));
      } catch (error) {
        fail(error as Error);
      }
    },
    restore: (set: LoggedSet) => void writer.restore(set.id).catch(fail),
    /** Puts another bar on all of them, in one step; what else is on record of each stays. */
    changeBar: async (sets: readonly LoggedSet[], barKg: number, what: string) => {
      const seq = await writer.correctAll(
        sets.map((set) => {
          const given = givenAgain(set);
          return { id: set.id, set: { ...given, barChecked: false, setup: { ...given.setup, barKg } } };
        }),
      );
      say(`Changed the bar of ${what}.`, () => undo(seq));
    },
    correct: writer.correct,
  };
}
