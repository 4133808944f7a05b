import { type Paper, pageRoomMm } from './paperSize.ts';

/** Lifters on one page: more, and the weight could no longer be read from three metres. */
export const mostOnPage = 9;

const headMm = 18;
const tallestRowMm = 64;
/** Small print: room of a line, and letters that surely fit on one. */
const lineMm = 3.65;
const lettersOnLine = 88;
const footAroundMm = 4;
const leastFootMm = 20;

/** Height of a lifter's row and of its large figures, so that all of a rack's lifters and all that must be said stand on one page. */
export function sheetRows(
  paper: Paper,
  lifters: number,
  said: readonly string[],
): { rowMm: number; numeralMm: number } {
  const lines = said.reduce((sum, sentence) => sum + Math.ceil(sentence.length / lettersOnLine), 0);
  const footMm = Math.max(leastFootMm, footAroundMm + lines * lineMm);
  const roomMm = pageRoomMm[paper].height - headMm - footMm;
  const rowMm = Math.min(tallestRowMm, roomMm / Math.max(1, lifters));
  // A figure is about half its row, and never so tall that five of them would not fit beside the rest.
  return { rowMm, numeralMm: Math.min(16.5, rowMm * 0.53) };
}
