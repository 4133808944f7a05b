import { allocateOperation } from './allocateOperation.ts';
import { bandCurveOperation } from './bandCurveOperation.ts';
import { estimateOperation } from './estimateOperation.ts';
import { fitStrengthOperation } from './fitStrengthOperation.ts';
import { loadCurveOperation } from './loadCurveOperation.ts';
import { maxBarOperation } from './maxBarOperation.ts';
import type { Operation } from './Operation.ts';
import { planComparisonOperation } from './planComparisonOperation.ts';
import { platesOperation } from './platesOperation.ts';
import { populationOperation } from './populationOperation.ts';
import { prescribeOperation } from './prescribeOperation.ts';
import { repOperation } from './repOperation.ts';
import { weighComparisonOperation } from './weighComparisonOperation.ts';

/** The calculations that are the core's alone; `reckon/operations.ts` has all. */
export const operations: readonly Operation[] = [
  bandCurveOperation,
  loadCurveOperation,
  repOperation,
  maxBarOperation,
  fitStrengthOperation,
  platesOperation,
  populationOperation,
  prescribeOperation,
  allocateOperation,
  estimateOperation,
  planComparisonOperation,
  weighComparisonOperation,
];
