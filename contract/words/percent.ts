import { signedText } from './signedText.ts';

/** A share in whole per cent: "45 %". */
export function percent(share: number): string {
  return `${signedText(percentFigure(share))} %`;
}

/** The figure alone, where the sign stands elsewhere. */
export function percentFigure(share: number): number {
  return Math.round(share * 100);
}

/** A share to a tenth of a per cent, without an idle nought: "45 %", "37.5 %". */
export function percentToTenth(share: number): string {
  return `${signedText(Number((100 * share).toFixed(1)))} %`;
}
