import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCli } from '../runCli.ts';
import { callCli } from '../tests/callCli.ts';

const bare = { target_kg: 20, bar_kg: 20, collars_kg: 0, discs: [] };
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rackwright-compute-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('rackwright compute', () => {
  it('answers the document on standard input with one on standard output', async () => {
    const { status, stdout, stderr } = await runCli(['compute', 'plates'], JSON.stringify(bare));
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({ loaded_kg: 20, perSide: [] });
  });

  it('reads the document from a file', async () => {
    const file = join(folder, 'bare.json');
    await writeFile(file, JSON.stringify(bare));
    const { status, stdout } = await callCli(['compute', 'plates', '--input', file]);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ loaded_kg: 20 });
  });

  it.each([
    ['a bad value', ['compute', 'plates'], JSON.stringify({ ...bare, bar_kg: -1 }), 'bar_kg'],
    ['an unknown field', ['compute', 'plates'], JSON.stringify({ ...bare, sparkle: 1 }), 'sparkle'],
    ['a number beyond all numbers', ['compute', 'plates'], '{"target_kg":1e999}', 'target_kg'],
    ['brackets without end', ['compute', 'plates'], '['.repeat(200_000) + ']'.repeat(200_000), ''],
    [
      'brackets without end in a field',
      ['compute', 'plates'],
      `{"target_kg":${'['.repeat(200_000)}${']'.repeat(200_000)}}`,
      'target_kg',
    ],
    ['no JSON', ['compute', 'plates'], '{"target_kg":', ''],
    ['no document', ['compute', 'plates'], '', ''],
    ['a file that is not there', ['compute', 'plates', '--input', '/nowhere/x.json'], '', 'input'],
    ['an unknown calculation', ['compute', 'sparkle'], '{}', 'operation'],
  ])('refuses %s with nothing on standard output, one JSON line, status 2', async (_, args, input, field) => {
    const { status, stdout, stderr } = await callCli(args, input);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(JSON.parse(stderr)).toMatchObject({ error: { field } });
  });

  it('lists calculations whose schemas it prints', async () => {
    const { status, stdout } = await callCli(['compute', '--list']);
    expect(status).toBe(0);
    const names = stdout
      .trimEnd()
      .split('\n')
      .map((line) => line.split(' ')[0]);
    expect(names).toEqual(
      expect.arrayContaining(['band-curve', 'load-curve', 'rep', 'max-bar', 'fit-strength', 'plates']),
    );
    const schema = await callCli(['compute', 'load-curve', '--schema']);
    expect(schema.status).toBe(0);
    const { input, output } = JSON.parse(schema.stdout);
    expect(input.properties.load.required).toEqual(['bar_kg', 'bottom_m', 'lockout_m']);
    expect(input.additionalProperties).toBe(false);
    expect(output.properties.points.type).toBe('array');
  });
});
