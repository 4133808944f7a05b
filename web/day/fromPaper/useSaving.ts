import type { LifterLine } from '#contract/paper/RackSheetModel.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { useUndo } from '#web/api/useUndo.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { SetOnPaper } from './setsOnPaper.ts';
import type { useWritten } from './useWritten.ts';
import { asAsked, questionOf, setOf, type WrittenField, wasAsked, wrongWith } from './writtenSet.ts';

/** A lifter as on the sheet, and the lines below the name. */
export interface LifterOnPaper {
  line: LifterLine;
  sets: readonly SetOnPaper[];
  doneOn: string;
}

/** What puts the sets that are marked as done on record: all of those lifters in one change, or none. */
export function useSaving({ written, put, leave }: ReturnType<typeof useWritten>) {
  const { mass } = useUnits();
  const say = useToast();
  const undo = useUndo();
  const writer = useSetWriter();
  const marked = ({ sets }: LifterOnPaper) =>
    sets.filter(({ key, logged }) => logged === null && written[key]?.done);

  /** True when nothing that is marked is left to save; `onWrong` hears which field holds it up. */
  const save = async (
    lifters: readonly LifterOnPaper[],
    onWrong: (key: string, field: WrittenField) => void,
  ): Promise<boolean> => {
    const sets = lifters.flatMap(marked);
    for (const set of sets) {
      const wrong = wrongWith(written[set.key]!, set, mass);
      if (wrong === null) continue;
      say(`Nothing was written yet: ${wrong.sentence}`);
      onWrong(set.key, wrong.field);
      return false;
    }
    const odd = sets.find((set) => {
      const typed = written[set.key]!;
      return questionOf(typed, set, mass) !== null && !wasAsked(typed, set);
    });
    if (odd) {
      const typed = written[odd.key]!;
      say(`Nothing was written yet: ${questionOf(typed, odd, mass)!.sentence} If that is so, save again.`);
      put(odd.key, asAsked(typed, odd));
      onWrong(odd.key, 'bar');
      return false;
    }
    if (sets.length === 0) {
      say('No set is marked as done.');
      return true;
    }
    try {
      const seq = await writer.logAll(sets.map((set) => setOf(written[set.key]!, set, mass)));
      leave(sets.map(({ key }) => key));
      const names = lifters.filter((lifter) => marked(lifter).length > 0).map(({ line }) => line.name);
      const who = names.length > 2 ? `${names.length} lifters` : names.join(' and ');
      say(`${who}: ${setsWord(sets.length)}, on record.`, () => undo(seq));
      return true;
    } catch (error) {
      say(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`);
      return false;
    }
  };
  return { save, busy: writer.busy, marked };
}

/** "1 set", "8 sets" */
export function setsWord(many: number): string {
  return many === 1 ? '1 set' : `${many} sets`;
}
