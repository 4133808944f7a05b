import { describe, expect, it } from 'vitest';
import { computePaths } from '#contract/compute/openApiPaths.ts';
import { operationNames, operations } from '#reckon/operations.ts';
import { computeRoutes } from './compute.ts';

const post = (path: string, body: string) => computeRoutes.request(path, { method: 'POST', body });

describe('POST /api/compute/:operation', () => {
  it('answers as the terminal does', async () => {
    const document = { target_kg: 20, bar_kg: 20, collars_kg: 0, discs: [] };
    const response = await post('/plates', JSON.stringify(document));
    expect(response.status).toBe(200);
    expect(await response.json()).toEqual({ loaded_kg: 20, perSide: [] });
  });

  it('says what is wrong by field', async () => {
    const response = await post('/plates', '{"sparkle":1}');
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({
      error: { field: expect.any(String), message: expect.any(String) },
    });
  });

  it('refuses text that is no JSON', async () => {
    expect((await post('/plates', '{')).status).toBe(400);
  });

  it('refuses brackets without end and a lifter weaker than the own body', async () => {
    expect((await post('/plates', '['.repeat(200_000) + ']'.repeat(200_000))).status).toBe(400);
    const capability = {
      strength_N: 100,
      slope: 0,
      curvature: 0,
      maxSpeed_mps: 2,
      rebound: 0,
      reboundTime_s: 1,
      strainAfter_s: 2,
      strainTime_s: 6,
      movedBody_kg: 80,
    };
    const load = { bar_kg: 20, bottom_m: 0.5, lockout_m: 1 };
    const response = await post('/max-bar', JSON.stringify({ load, capability }));
    expect(response.status).toBe(400);
    expect((await response.json()).error.field).toBe('capability.strength_N');
  });

  it('names the calculations that there are', async () => {
    const response = await post('/sparkle', '{}');
    expect(response.status).toBe(404);
    const { error } = await response.json();
    for (const name of operationNames) expect(error.message).toContain(name);
    const list = await (await computeRoutes.request('/')).json();
    expect(list.operations.map(({ name }: { name: string }) => name)).toEqual(operationNames);
  });

  it('describes each of them', () => {
    expect(Object.keys(computePaths(operations))).toEqual(
      operationNames.map((name) => `/api/compute/${name}`),
    );
  });
});
