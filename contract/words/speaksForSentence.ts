import { TIE } from '#core/day/nextProposals.ts';
import type { SpeaksFor } from '#core/day/runnersUp.ts';

/** What speaks for a setup beside the best one, in one sentence. */
export function speaksForSentence(found: readonly SpeaksFor[], mass: (kg: number) => string): string {
  const said = found.map((one) => wordsOf(one, mass)).join(', ');
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

function wordsOf(one: SpeaksFor, mass: (kg: number) => string): string {
  switch (one.code) {
    case 'nearerToAim':
      return `${points(one.misfitLess)} closer to the aim`;
    case 'fewerPieces':
      return one.pieces === 1 ? 'one piece fewer to hang' : `${one.pieces} pieces fewer to hang`;
    case 'allMeasured':
      return 'all of its bands are measured';
    case 'samePairs':
      return 'the same pairs, hung another way';
    case 'heavierBar':
      return `${mass(one.kg)} more on the bar`;
    case 'lighterBar':
      return `${mass(one.kg)} less on the bar`;
    case 'nearlyAsGood':
      return one.misfitMore < TIE ? 'as close to the aim' : `${points(one.misfitMore)} further from the aim`;
  }
}

function points(misfit: number): string {
  const said = (100 * misfit).toFixed(1);
  return `${said} ${said === '1.0' ? 'point' : 'points'}`;
}
