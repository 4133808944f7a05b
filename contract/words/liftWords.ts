import type { Equipment, Lift, Start } from '#contract/records/lift.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';

/** The gym's words for lifts, starts and equipment, for every screen alike. */
export const liftWords = [
  { value: 'squat', word: 'squat' },
  { value: 'bench', word: 'bench press' },
  { value: 'deadlift', word: 'deadlift' },
] as const satisfies readonly { value: Lift; word: string }[];

export const equipmentWords = [
  { value: 'raw', word: 'raw' },
  { value: 'wraps', word: 'knee wraps' },
  { value: 'single-ply', word: 'single-ply' },
  { value: 'multi-ply', word: 'multi-ply' },
] as const satisfies readonly { value: Equipment; word: string }[];

const ways: Record<Lift, readonly Start['way'][]> = {
  squat: ['free', 'box', 'pins'],
  bench: ['free', 'paused', 'boards', 'pins'],
  deadlift: ['free', 'blocks', 'deficit', 'pins'],
};

const freeWord: Record<Lift, string> = { squat: 'free', bench: 'touch and go', deadlift: 'from the floor' };

/** The ways in which a lift may begin. */
export function startWords(lift: Lift): { value: Start['way']; word: string }[] {
  return ways[lift].map((way) => ({ value: way, word: way === 'free' ? freeWord[lift] : way }));
}

/** Whether a start is told by a height: of the box, the pins, the boards ... */
export function hasHeight(way: Start['way']): boolean {
  return way !== 'free' && way !== 'paused';
}

export function liftWord(lift: Lift): string {
  return liftWords.find(({ value }) => value === lift)?.word ?? lift;
}

export function equipmentWord(equipment: Equipment): string {
  return equipmentWords.find(({ value }) => value === equipment)?.word ?? equipment;
}

/** "box 36 cm", "touch and go", "blocks 10 cm". */
export function startText(lift: Lift, start: Start, unit: LengthUnit): string {
  if (start.way === 'free') return freeWord[lift];
  return start.heightM === null ? start.way : `${start.way} ${formatQuantity(start.heightM, unit)}`;
}
