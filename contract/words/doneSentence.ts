import type { DoneChange } from '#contract/changes/doneChange.ts';
import { allKinds } from '#contract/records/allKinds.ts';
import { capital } from './capital.ts';
import { counted } from './counted.ts';
import { liftWord } from './liftWords.ts';

type Did = DoneChange['records'][number]['did'];

/** What a change did, as one sentence: "Changed the bar "Old bar".", "Logged 3 sets: Ida Quill, squat." */
export function doneSentence(change: Pick<DoneChange, 'back' | 'replaced' | 'records' | 'sets'>): string {
  const { back, replaced } = change;
  const done = replaced ? 'the whole club replaced by another' : whatOf(change);
  if (back) return `${back.again ? 'Done again' : 'Taken back'}: ${done}.`;
  return `${capital(done)}.`;
}

/** Most is said of the first: what a change did beside that follows from it. */
function whatOf({ records, sets }: Pick<DoneChange, 'records' | 'sets'>): string {
  const ofSets = setsIn(sets);
  if (ofSets !== null) return ofSets;
  const [first, ...others] = records;
  if (first === undefined) return 'worked a day out, or saved without a change';
  const rest = others.reduce((sum, { count }) => sum + count, 0);
  return `${oneOf(first)}${rest === 0 ? '' : `, and ${counted(rest, 'record')} with ${first.count === 1 ? 'it' : 'them'}`}`;
}

function oneOf({ kind, did, count, called, of }: DoneChange['records'][number]): string {
  const whose = of === null ? '' : ` of ${of}`;
  if (count > 1) return `${words[did]} ${count} ${allKinds[kind].facts.many}${whose}`;
  if (kind === 'club') return `${words[did]} the settings of the club`;
  return `${words[did]} the ${called}${whose}`;
}

const words: Record<Did, string> = { added: 'added', changed: 'changed', removed: 'removed' };

/** Null where it did nothing to the log. What takes the place of a struck set is a correction. */
function setsIn(sets: DoneChange['sets']): string | null {
  const [first, ...others] = sets;
  if (first === undefined) return null;
  const isCorrection = sets.some(({ did }) => did === 'struck') && sets.some(({ did }) => did === 'counts');
  const shown = isCorrection ? sets.filter(({ did }) => did === 'counts') : sets;
  const total = shown.reduce((sum, { count }) => sum + count, 0);
  const verb = isCorrection
    ? 'corrected'
    : first.did === 'struck'
      ? 'struck'
      : first.isNew
        ? 'logged'
        : 'restored';
  const isAlone = others.every(({ lifter }) => lifter === first.lifter);
  const isOneLift = others.every(({ lift }) => lift === first.lift);
  const lifters = new Set(sets.map(({ lifter }) => lifter)).size;
  const whose = isAlone ? first.lifter : `${first.lifter} and ${counted(lifters - 1, 'other')}`;
  return `${verb} ${counted(total, 'set')}: ${whose}${isOneLift ? `, ${liftWord(first.lift)}` : ''}`;
}
