import type { Variant } from '#contract/records/method.ts';

/**
 * Starts that the shipped methods rotate through. Boxes go by each lifter's own depth; boards are planks 4 cm thick, laid one upon another, since a club
 * records none. Common practice, no source.
 */
export const parallelBox: Variant = {
  id: 'parallel-box',
  title: 'off a parallel box',
  start: { way: 'ownBox', aboveParallelM: 0 },
};
export const lowBox: Variant = {
  id: 'low-box',
  title: 'off a low box, 3 cm below parallel',
  start: { way: 'ownBox', aboveParallelM: -0.03 },
};
export const highBox: Variant = {
  id: 'high-box',
  title: 'off a high box, 6 cm above parallel',
  start: { way: 'ownBox', aboveParallelM: 0.06 },
};
export const freeSquat: Variant = { id: 'free', title: 'free', start: { way: 'free', heightM: null } };
export const pausedSquat: Variant = {
  id: 'paused',
  title: 'paused',
  start: { way: 'paused', heightM: null },
};

export const pausedBench: Variant = {
  id: 'paused',
  title: 'paused',
  start: { way: 'paused', heightM: null },
};
export const touchAndGo: Variant = {
  id: 'free',
  title: 'touch and go',
  start: { way: 'free', heightM: null },
};
export const oneBoard: Variant = {
  id: 'one-board',
  title: 'to one board of 4 cm',
  start: { way: 'boards', heightM: 0.04 },
};
export const twoBoards: Variant = {
  id: 'two-boards',
  title: 'to two boards of 4 cm',
  start: { way: 'boards', heightM: 0.08 },
};
export const threeBoards: Variant = {
  id: 'three-boards',
  title: 'to three boards of 4 cm',
  start: { way: 'boards', heightM: 0.12 },
};

export const fromFloor: Variant = {
  id: 'floor',
  title: 'from the floor',
  start: { way: 'free', heightM: null },
};
export const offBlocks: Variant = {
  id: 'blocks',
  title: 'off blocks of 8 cm',
  start: { way: 'blocks', heightM: 0.08 },
};
export const deficit: Variant = {
  id: 'deficit',
  title: 'from a deficit of 5 cm',
  start: { way: 'deficit', heightM: 0.05 },
};
