import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { counted } from '#contract/words/counted.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { percent } from '#contract/words/percent.ts';
import { signedText } from '#contract/words/signedText.ts';
import type { StartProposal, StartReason } from './startProposal.ts';

/** What is proposed of the starts of a group for one lifter on a day, and why. */
export function startSentences({ proposed }: StartProposal, date: string): string[] {
  if (proposed === null)
    return [
      'No start has rested as long as the method says. The start in the plan stands; choose another by hand if you like.',
    ];
  return [
    `Proposed for this lifter: ${proposed.variant.title}.`,
    ...proposed.reasons.map((reason) => startReason(reason, date)),
  ];
}

/** "21 days before", "not in the log". */
export function daysSince(lastDoneOn: string | null, date: string): string {
  return lastDoneOn === null
    ? 'not in the log'
    : `${counted(dayNumber(date) - dayNumber(lastDoneOn), 'day')} before, on ${shortDate(lastDoneOn)}`;
}

function startReason(reason: StartReason, date: string): string {
  switch (reason.code) {
    case 'due':
      return reason.lastDoneOn === null
        ? 'It is due: of the starts that have rested, it is the first one not done yet.'
        : `It is due: of the starts that have rested, it was done longest ago, ${daysSince(reason.lastDoneOn, date)}.`;
    case 'carriedOver': {
      const { value, low80, high80, whose } = reason;
      const who = whose === 'lifter' ? 'this lifter' : 'the club (too few meets of this lifter to say)';
      return `It carried over: a kg gained that way was worth ${signedText(value, { decimals: 1 })} kg on the platform for ${who} (most likely ${signedText(low80, { decimals: 1 })} to ${signedText(high80, { decimals: 1 })}). That is no proof: starts were not drawn by lot.`;
    }
    case 'misses':
      return `It begins just below where the last ${counted(reason.count, 'miss', 'misses')} stopped, ${percent(reason.atS)} of the way up. Common practice, no source.`;
  }
}
