import { type GivenSet, givenSet } from '#contract/records/loggedSet.ts';
import { massQuestion } from '#contract/words/massQuestion.ts';
import type { Question } from '#contract/words/meantInstead.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { parseQuantity } from '#core/units/parseQuantity.ts';
import { fieldIn, textLimits } from '#web/parts/limits.ts';
import { wrongQuantity } from '#web/parts/wrongQuantity.ts';
import { speedsOf, wrongSpeeds } from '#web/setup/SpeedsField.tsx';
import { barLimits } from '#web/setup/setDraft.ts';
import type { SetOnPaper } from './setsOnPaper.ts';

/** What is typed of one set on paper; null: as it is printed there. */
export interface WrittenSet {
  bar: string | null;
  made: string | null;
  speeds: string;
  remark: string;
  /** It was done, and goes on record with the next saving. */
  done: boolean;
  /** The bar that was asked about and left as it is. */
  barAsked?: string;
}

export type WrittenField = 'bar' | 'made' | 'speeds' | 'remark';

export const asPrinted: WrittenSet = { bar: null, made: null, speeds: '', remark: '', done: false };

type Printed = Pick<SetOnPaper, 'printedBar' | 'draft'>;

/** What stands in the fields of a set. */
export function shownOf(
  { bar, made, speeds, remark }: WrittenSet,
  { printedBar, draft }: Printed,
): Record<WrittenField, string> {
  return { bar: bar ?? printedBar, made: made ?? String(draft.reps), speeds, remark };
}

/** What is wrong with a set as it is typed, and in which field; null: it can go on record. */
export function wrongWith(
  written: WrittenSet,
  printed: Printed,
  mass: MassUnit,
): { field: WrittenField; sentence: string } | null {
  const shown = shownOf(written, printed);
  const wrong = {
    bar: isAsPrinted(written, printed)
      ? null
      : wrongQuantity(shown.bar, { label: 'On the bar', unit: mass, ...barLimits, required: true }),
    made: wrongReps(shown.made),
    speeds: wrongSpeeds('Mean speed', shown.speeds, madeOf(shown.made)),
    remark: wrongRemark(shown.remark),
  };
  const field = (Object.keys(wrong) as WrittenField[]).find((name) => wrong[name] !== null);
  return field === undefined ? null : { field, sentence: wrong[field]! };
}

/** Beyond these times the planned bar, or below this share of it, somebody may have read pounds for kilograms (judgement). */
const usualOfPlanned = { mostTimes: 1.5, leastShare: 0.5 };

/** What is asked of a bar far from the one on the paper, where it is not wrong; null: nothing. */
export function questionOf(written: WrittenSet, printed: Printed, mass: MassUnit): Question | null {
  const { barKg } = printed.draft.setup;
  if (barKg <= 0 || isAsPrinted(written, printed) || wrongWith(written, printed, mass)?.field === 'bar')
    return null;
  const usual = { called: 'the bar on the paper', massKg: barKg, ...usualOfPlanned };
  return massQuestion(siOf(shownOf(written, printed).bar, mass), mass, usual);
}

/** Whether that question was put to whoever typed this very bar. */
export function wasAsked(written: WrittenSet, printed: Printed): boolean {
  return written.barAsked === shownOf(written, printed).bar;
}

/** The same set, whose bar somebody was asked about. */
export function asAsked(written: WrittenSet, printed: Printed): WrittenSet {
  return { ...written, barAsked: shownOf(written, printed).bar };
}

/** The set for the log. A bar as it is printed is the planned one, to the gram; reps beyond the plan were asked for, too. */
export function setOf(written: WrittenSet, printed: Printed, mass: MassUnit): GivenSet {
  const shown = shownOf(written, printed);
  const { draft } = printed;
  const made = madeOf(shown.made);
  return {
    ...draft,
    setup: {
      ...draft.setup,
      barKg: isAsPrinted(written, printed) ? draft.setup.barKg : siOf(shown.bar, mass),
    },
    reps: Math.max(draft.reps, made),
    made,
    meanSpeedsMps: speedsOf(shown.speeds),
    note: shown.remark.trim(),
  };
}

/** The same set with a rep fewer made; nothing is fewer than none. */
export function withMiss(written: WrittenSet, { draft }: Printed): WrittenSet {
  const made = madeOf(written.made ?? String(draft.reps));
  return { ...written, made: String(Math.max(0, (Number.isNaN(made) ? draft.reps : made) - 1)), done: true };
}

const remarkLimits = textLimits(fieldIn(givenSet.shape, 'note'));
const mostReps = fieldIn(givenSet.shape, 'made').most ?? 0;

function isAsPrinted({ bar }: WrittenSet, { printedBar }: Printed): boolean {
  return bar === null || bar.trim() === printedBar;
}

/** Of a text that was found to be right. */
function siOf(text: string, mass: MassUnit): number {
  const parsed = parseQuantity(text, mass);
  return parsed.ok ? parsed.valueSi : Number.NaN;
}

function madeOf(text: string): number {
  return text.trim() === '' ? Number.NaN : Number(text);
}

function wrongReps(text: string): string | null {
  const made = madeOf(text);
  if (Number.isInteger(made) && made >= 0 && made <= mostReps) return null;
  return `Reps made is ${text.trim() === '' ? 'empty' : `"${text.trim()}"`}; it is a whole number, 0 to ${mostReps}.`;
}

function wrongRemark(text: string): string | null {
  const { maxLength } = remarkLimits;
  if (maxLength === undefined || text.length <= maxLength) return null;
  return `Remark has ${text.length} letters; at most ${maxLength} are kept.`;
}
