import { type Paper, pageRoomMm } from './paperSize.ts';

/** Millimetres of head and foot of a sheet. */
const headMm = 19;
const footMm = 30;
const tallestRowMm = 64;
/** Lifters on one page: more, and the weight could no longer be read from three metres. */
export const mostOnPage = 9;

/** Height of a lifter's row and of its large numerals, so that all of a rack's lifters stand on one page. */
export function sheetRows(paper: Paper, lifters: number): { rowMm: number; numeralMm: number } {
  const rowMm = Math.min(tallestRowMm, (pageRoomMm[paper].height - headMm - footMm) / Math.max(1, lifters));
  // A numeral is never taller than half its row, nor so tall that five of them would not fit beside the rest.
  return { rowMm, numeralMm: Math.min(19, rowMm * 0.52) };
}
