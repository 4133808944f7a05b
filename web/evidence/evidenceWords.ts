import type { EvidenceLine, Question } from '#contract/evidence/evidenceReport.ts';
import { capital } from '#contract/words/capital.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { variantText } from '#contract/words/variantText.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';

type ViewUnits = Pick<Units, 'mass' | 'length'>;

/** The questions as the page asks them. */
export function questionText(question: Question, { length }: ViewUnits): string {
  return {
    carryOver: 'How much of a gym gain reaches the platform?',
    boxHeight: `What is ${length === 'cm' ? 'a centimetre' : 'an inch'} of box worth?`,
    variants: 'What was a gain in each assistance lift worth?',
    bandShare: 'Did more band come with larger gains?',
    equipped: 'Is it different in equipment?',
  }[question];
}

/** What the numbers of an answer count, for axis and table head. */
export function measureText(question: Question, { mass, length }: ViewUnits): string {
  const carried = `${mass} on the platform, for 10 ${mass} in the gym`;
  return {
    carryOver: carried,
    variants: carried,
    equipped: carried,
    boxHeight: `% of the bar, for ${length === 'cm' ? 'a centimetre' : 'an inch'} more of box height`,
    bandShare: '% of the lift from meet to meet, for 10 points more of the load in bands',
  }[question];
}

/** What one observation is. */
export function countedText(question: Question): string {
  return {
    carryOver: 'Gains',
    variants: 'Gains',
    equipped: 'Gains',
    boxHeight: 'Lifts',
    bandShare: 'Blocks',
  }[question];
}

/** Whose line it is, as picture and table name it. */
export function lineName(
  question: Question,
  line: EvidenceLine,
  lifterName: string | null,
  /** Of those with it; empty: of the whole club. */
  label = '',
): string {
  const { variant, lift, equipped } = line;
  if (lifterName !== null) return lifterName;
  if (variant !== null) return capital(variantText(variant));
  if (lift !== null) return `${label ? capital(label) : 'Club'}, ${liftWord(lift)}`;
  if (equipped !== null) return equipped ? 'In equipment' : 'Raw';
  return question === 'equipped' ? 'Equipped minus raw' : label ? `All of ${label}` : 'The whole club';
}
