import type { EvidenceAnswer } from '#contract/evidence/evidenceReport.ts';
import { heightWorth } from '#core/evidence/heightWorth.ts';
import { type ShareRow, shareGain } from '#core/evidence/shareGain.ts';
import { heightRows } from './blockRows.ts';
import { toldLines } from './evidenceLines.ts';
import type { HardLift } from './HardLift.ts';
import { tooFewMeets } from './trapsOf.ts';

/** What a unit of box height is worth: ln of the bar a metre, told as % a cm. */
export function boxHeight(lifts: readonly HardLift[]): EvidenceAnswer {
  const rows = heightRows(lifts);
  return {
    question: 'boxHeight',
    lines: toldLines(rows, heightWorth(rows), (lnAMetre) => 100 * Math.expm1(lnAMetre / 100)),
    traps: [{ code: 'techniqueOfHeight' }],
  };
}

/** Whether higher band shares came with larger gains: gain as a share of the lift for a whole of band share, told as % for 10 points. */
export function bandShare(blocks: readonly ShareRow[], about: EvidenceAnswer['traps']): EvidenceAnswer {
  return {
    question: 'bandShare',
    lines: toldLines(blocks, shareGain(blocks), (gain) => 10 * gain),
    traps: [{ code: 'notByLot' }, tooFewMeets(blocks), ...about],
  };
}
