import * as fc from 'fast-check';

/**
 * Every run of one commit draws the same cases, so that a red check is the change's own and is red again when it is
 * run again. `PROPERTY_SEED` draws others, `PROPERTY_RUNS` draws more where a property names no number of its own.
 */
fc.configureGlobal({
  seed: Number(process.env.PROPERTY_SEED ?? 1),
  numRuns: Number(process.env.PROPERTY_RUNS ?? 100),
});
