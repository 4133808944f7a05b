import type { Operation } from '#contract/compute/Operation.ts';
import { operations as ofCore } from '#contract/compute/operations.ts';
import { planClubSeasonOperation } from './season/planClubSeasonOperation.ts';
import { planSeasonOperation } from './season/planSeasonOperation.ts';

/** Every calculation that is open to other programs; terminal, HTTP and API description loop over this list. */
export const operations: readonly Operation[] = [...ofCore, planSeasonOperation, planClubSeasonOperation];

export const operationNames = operations.map(({ name }) => name);

export function findOperation(name: string): Operation | undefined {
  return operations.find((operation) => operation.name === name);
}
