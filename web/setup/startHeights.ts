import type { Start } from '#contract/records/lift.ts';
import type { Usual } from '#contract/words/usualQuestion.ts';

/** Heights to begin typing from; pins are told by the bar on them. Common practice, no source. */
export const usualHeightM: Record<Start['way'], number | null> = {
  free: null,
  paused: null,
  box: 0.36,
  pins: 1,
  boards: 0.05,
  blocks: 0.1,
  deficit: 0.05,
};

/** What is measured of a start that has a height. */
export const heightWord: Record<Start['way'], string> = {
  free: 'Height',
  paused: 'Height',
  box: 'Box height',
  pins: 'Bar on pins at',
  boards: 'Boards, thick',
  blocks: 'Discs raised by',
  deficit: 'Lifter raised by',
};

/** The highest that each can be (m): more is a slip of the finger. */
export const mostHeightM: Record<Start['way'], number> = {
  free: 0,
  paused: 0,
  box: 1,
  pins: 2.2,
  boards: 0.5,
  blocks: 0.5,
  deficit: 0.5,
};

/** Between which each lies as a rule (m); beyond it somebody is asked. Common practice, no source. */
export const usualHeightsM: Record<Start['way'], Usual> = {
  free: [0, 0],
  paused: [0, 0],
  box: [0.2, 0.6],
  pins: [0.3, 1.8],
  boards: [0.015, 0.2],
  blocks: [0.02, 0.45],
  deficit: [0.01, 0.15],
};
