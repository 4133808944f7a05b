import { effortLine } from './effortWords.ts';
import { type Paper, pageRoomMm } from './paperSize.ts';
import type { RackSheet, WrittenStep } from './RackSheetModel.ts';

/** Lifters on one page: more, and the weight could no longer be read from three metres. */
const mostOnPage = 9;
/** A line of the steps is no lower than this and no higher (mm). */
const leastStepMm = 3.5;
const tallestStepMm = 4.8;
/** As much of a row may go to its steps before they are set closer. */
const stepsShare = 0.42;
const aroundRowMm = 2.5;
/** Room (mm) of a row above its steps, and of all rows where much is said below them. */
const leastAboveMm = 15.5;
const roomForRowsMm = 222;

/** What is said of a step fits on one line up to so many letters. */
const lettersOnStep = 90;

/** Each step has a line of its own, and a second one where more is said of it than fits beside its boxes. */
export function linesOfStep({ effort }: WrittenStep): number {
  return effortLine(effort).length > lettersOnStep ? 2 : 1;
}

/** Lines of the lifter whose steps take most of them. */
export function mostStepLines(lifters: readonly { steps: readonly WrittenStep[] }[]): number {
  return Math.max(0, ...lifters.map(({ steps }) => steps.reduce((sum, step) => sum + linesOfStep(step), 0)));
}

/** How many lifters whose steps take so many lines go on one page below what stands above the rows. */
export function mostLifters(stepLines: number, above: string): number {
  return Math.max(
    1,
    Math.min(
      mostOnPage,
      Math.floor((roomForRowsMm - aboveMm(above)) / (leastAboveMm + leastStepMm * stepLines)),
    ),
  );
}

/** What the coach calls the day and wrote of it, as it runs across the page above the rows; empty: nothing. */
export function aboveRows({ title, note }: Pick<RackSheet, 'title' | 'note'>): string {
  return [title, note && `Note: ${note}`].filter(Boolean).join(' ');
}

/** It runs across the page: room of a line, and letters that surely fit on one, capitals too. */
const noteLineMm = 4.25;
const lettersOnNoteLine = 84;
const noteAroundMm = 2;

/** Room (mm) that it takes of a page. */
function aboveMm(above: string): number {
  if (above === '') return 0;
  return noteAroundMm + noteLineMm * Math.ceil(above.length / lettersOnNoteLine);
}

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
  stepLines: number,
  said: readonly string[],
  above: string,
): { rowMm: number; numeralMm: number; stepMm: number } {
  const lines = said.reduce((sum, sentence) => sum + Math.ceil(sentence.length / lettersOnLine), 0);
  const footMm = Math.max(leastFootMm, footAroundMm + lines * lineMm);
  const roomMm = pageRoomMm[paper].height - headMm - aboveMm(above) - footMm;
  const rowMm = Math.min(tallestRowMm, roomMm / Math.max(1, lifters));
  const stepMm = Math.min(
    tallestStepMm,
    Math.max(leastStepMm, (rowMm * stepsShare) / Math.max(1, stepLines)),
  );
  const leftMm = rowMm - stepLines * stepMm - aroundRowMm;
  // A figure is about half its row, and never so tall that five of them would not fit beside the rest.
  return { rowMm, numeralMm: Math.min(16.5, rowMm * 0.53, leftMm), stepMm };
}
