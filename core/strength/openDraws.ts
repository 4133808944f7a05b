import { evenNormals } from '../numeric/evenNormals.ts';
import type { Draw } from './Draw.ts';
import { type ParameterName, type Prior, parameterNames } from './parameters.ts';

/**
 * Draws in which a parameter that no set told anything of is as uncertain as it was before: a lifter who never stood on a
 * platform may gain or lose there as the club's lifters do. `learned` are the ones that the log told of.
 */
export function openDraws(
  draws: readonly Draw[],
  learned: readonly ParameterName[],
  { mean, sd }: Prior,
): Draw[] {
  const open = parameterNames.filter((name) => !learned.includes(name));
  if (open.length === 0) return [...draws];
  const normals = evenNormals(draws.length, open.length);
  return draws.map((draw, i) => {
    const opened = { ...draw };
    open.forEach((name, k) => {
      opened[name] = mean[name] + sd[name] * normals[i]![k]!;
    });
    return opened;
  });
}
