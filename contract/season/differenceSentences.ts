import { counted } from '#contract/words/counted.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { equipmentWord, liftWord } from '#contract/words/liftWords.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { className } from './classSentences.ts';
import { depthWords } from './depthWords.ts';
import type { HeldTo } from './heldTo.ts';
import type { DayDifference, DifferenceReason, GroupDifference, WeekDifference } from './planDifferences.ts';

/** Why a plan differs from the one that was taken. */
export function reasonSentence(reason: DifferenceReason): string {
  switch (reason.code) {
    case 'method': {
      const { before, now } = reason;
      return before.title === now.title
        ? `${now.title} is followed in version ${now.version} instead of ${before.version}.`
        : `${now.title} is followed instead of ${before.title}.`;
    }
    case 'firstDay':
      return `The season begins on ${shortDate(reason.now)} instead of ${shortDate(reason.before)}.`;
    case 'meetMoved':
      return `${reason.title} is on ${shortDate(reason.now)} instead of ${shortDate(reason.before)}.`;
    case 'meetNew':
      return `${reason.meet.title} on ${shortDate(reason.meet.date)} is now trained for.`;
    case 'meetGone':
      return `${reason.meet.title} on ${shortDate(reason.meet.date)} is no longer trained for.`;
    case 'closedNew':
      return `No training ${span(reason.closed)}: ${reason.closed.why}.`;
    case 'closedGone':
      return `Training again ${span(reason.closed)}: no longer ${reason.closed.why}.`;
    case 'heldNew':
      return `Restricted in the ${liftWord(reason.held.lift)} ${heldSpan(reason.held)}: starts and loads of those days keep to it. Do as the physician or physiotherapist says.`;
    case 'heldGone':
      return `No longer restricted in the ${liftWord(reason.held.lift)} ${heldSpan(reason.held)}.`;
    case 'equipment':
      return `Lifts ${equipmentWord(reason.now)} instead of ${equipmentWord(reason.before)}: percentages now refer to that maximum, so every bar ahead changes.`;
    case 'class':
      return classSentence(reason);
    case 'byHand':
      return `You changed what is set by hand on ${shortDate(reason.date)}.`;
    case 'ownBox':
      return `The squat ${depthWords(reason.aboveParallelM)} is now on a box of ${cm(reason.nowM)} instead of ${cm(reason.beforeM)}: heights were measured, or the club has other boxes.`;
    case 'strength':
      return `Strength in the ${liftWord(reason.lift)} now calls for other bands.`;
  }
}

function cm(heightM: number): string {
  return formatQuantity(heightM, 'cm');
}

function classSentence({ title, before, now }: Extract<DifferenceReason, { code: 'class' }>): string {
  if (now === null) return `Class at ${title}: no longer said; it was ${className(before!.upToKg)}.`;
  return before === null
    ? `Class at ${title}: ${className(now.upToKg)}, which nobody had said before.`
    : `Class at ${title}: ${className(now.upToKg)} instead of ${className(before.upToKg)}.`;
}

function heldSpan({ from, until }: HeldTo): string {
  return until === null ? `from ${shortDate(from)} until further notice` : span({ from, until });
}

function span({ from, until }: { from: string; until: string }): string {
  return from === until ? `on ${shortDate(from)}` : `from ${shortDate(from)} to ${shortDate(until)}`;
}

/** What differs in one week: its phase first, then day by day. */
export function weekDifferenceSentences({ monday, phase, days }: WeekDifference): string[] {
  const week = `Week of ${shortDate(monday)}`;
  if (phase === null) return days.map(daySentence);
  const before = phase.before ?? 'no phase';
  const now = phase.now ?? 'no phase';
  const also = days.length === 0 ? '' : `; ${counted(days.length, 'day')} changed`;
  return [`${week}: ${now} instead of ${before}${also}.`];
}

function daySentence({ date, title, what, groups }: DayDifference): string {
  const day = shortDate(date);
  if (what === 'gone') return `${day}: no ${title}.`;
  if (what === 'new') return `${day}: ${title} is new.`;
  return `${day}: ${groups.map(groupWords).join('; ')}.`;
}

function groupWords({ title, what, in: fields }: GroupDifference): string {
  if (what === 'gone') return `no ${title}`;
  if (what === 'new') return `${title} is new`;
  return `${title} with ${fields.map((field) => inWords[field]).join(', ')}`;
}

const inWords: Record<GroupDifference['in'][number], string> = {
  variant: 'another start',
  aim: 'another aim',
  steps: 'other sets and reps',
  rest: 'other bounds',
};
