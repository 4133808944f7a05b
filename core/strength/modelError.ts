import { ownRoom } from '../numeric/room.ts';
import { convolve, type Lattice, normalLattice } from './lattice.ts';

/**
 * By so much (standard deviation of ln strength) the model itself may be off about a lifter, however long the log: no lifter is
 * made quite as an equation of motion has it, and more sets of the same kind do not show it. So far, as a root mean square over lifts,
 * lay what was believed in the mean of whole groups of lifters simulated by two other models (docs/calibration.md; that a model's
 * own error belongs in what it tells: Kennedy & O'Hagan 2001, J R Stat Soc B 63:425).
 */
export const MODEL_SD_LN = 0.02;

const error = normalLattice(0, MODEL_SD_LN);

/** Answers as they are told to anybody: beside what the log leaves open of strength, the model's own error. */
export function withModelError<Answer extends { strength: Lattice }>(answers: readonly Answer[]): Answer[] {
  return answers.map((answer) => ({ ...answer, strength: convolve(answer.strength, error, ownRoom) }));
}
