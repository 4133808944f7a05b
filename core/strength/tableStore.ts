import type { PopulationShape } from '../lifter/populationShape.ts';
import type { CompiledLoad } from '../load/compileLoad.ts';
import type { Rigging } from './Rigging.ts';

/** Pulls and heights nearer than this make no difference that a set could tell (N, kg, m). */
const SAME_PULL_N = 3;
const SAME_CHAIN_KG = 0.2;
const SAME_HEIGHT_M = 0.002;
/** Places at which two loads are compared. */
const PLACES = 6;
/** A table takes some kilobytes; the oldest go when there are more. */
const MOST_TABLES = 4000;

const stores = new WeakMap<PopulationShape, Map<string, unknown>>();

/**
 * The same table for the same question: riggings that a lifter could not tell apart share theirs, whatever rack, day or
 * set they come from. A table is some hundred simulated reps, and a log asks for few different ones.
 */
export function keptTable<Table>(
  shape: PopulationShape,
  kind: string,
  rigging: Rigging,
  compiled: CompiledLoad,
  lnTotal: number,
  make: () => Table,
): Table {
  const store = stores.get(shape) ?? new Map<string, unknown>();
  stores.set(shape, store);
  const key = `${kind} ${likenessOf(rigging, compiled)} ${lnTotal.toFixed(4)}`;
  const kept = store.get(key);
  if (kept !== undefined) return kept as Table;
  const made = make();
  if (store.size >= MOST_TABLES) store.delete(store.keys().next().value!);
  store.set(key, made);
  return made;
}

/** What of a rigging a rep depends on, in steps too small to feel. */
function likenessOf({ start, range }: Rigging, compiled: CompiledLoad): string {
  const { bottomM, lockoutM, gravityMps2 } = compiled.load;
  const parts: (string | number)[] = [start, gravityMps2.toFixed(3)];
  for (const heightM of [range.toM - range.fromM, bottomM - range.fromM, lockoutM - range.fromM])
    parts.push(Math.round(heightM / SAME_HEIGHT_M));
  for (let i = 0; i < PLACES; i++) {
    const zM = bottomM + (i / (PLACES - 1)) * (lockoutM - bottomM);
    parts.push(Math.round(compiled.bandN(zM) / SAME_PULL_N));
    parts.push(Math.round(compiled.hangingKg(zM) / SAME_CHAIN_KG));
  }
  return parts.join(' ');
}
