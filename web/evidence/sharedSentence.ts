import type { EvidenceAnswer } from '#contract/evidence/evidenceReport.ts';
import { countedText } from './evidenceWords.ts';
import { sharedLines } from './shownLines.ts';

/** Who shares the club's number, said once in place of a row each; null where nobody does. */
export function sharedSentence(
  answer: EvidenceAnswer,
  lifterId: string | null,
  nameOf: (lifterId: string) => string,
  ofAll = 'the club',
): string | null {
  const shared = sharedLines(answer).filter((line) => lifterId === null || line.lifterId === lifterId);
  if (shared.length === 0) return null;
  const counts = shared.map(({ observations }) => observations);
  const most = Math.max(...counts);
  const each = countText(Math.min(...counts), most, countedText(answer.question));
  const names = shared.map((line) => nameOf(line.lifterId ?? '')).sort((a, b) => a.localeCompare(b));
  const whole = ofAll === 'the club' ? 'the whole club' : `all of ${ofAll}`;
  if (shared.length === 1)
    return `${names[0]}: as ${whole}; ${each} of their own ${most === 1 ? 'shows' : 'show'} no difference.`;
  const everybody = answer.lines.filter((line) => line.lifterId !== null).length === shared.length;
  const who = everybody ? `All ${shared.length} lifters` : `${shared.length} lifters (${names.join(', ')})`;
  return `${who} share ${ofAll}'s number: with ${each} each, the log shows no difference between them.`;
}

/** "6 to 30 lifts", "1 lift". */
function countText(least: number, most: number, what: string): string {
  const word = what.toLowerCase();
  if (least === most) return `${least} ${least === 1 ? word.replace(/s$/, '') : word}`;
  return `${least} to ${most} ${word}`;
}
