import { describe, expect, it } from 'vitest';
import { callCli } from '../tests/callCli.ts';

const file = 'length_cm,force_kg\n150,10\n200,20\n';

describe('rackwright band', () => {
  it('draws the readings in plain characters, without colour', async () => {
    const { status, stdout, stderr } = await callCli(['band', '--rest', '100 cm'], file);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.match(/\|.*o/g)).toHaveLength(2);
    expect(stdout).toMatch(/^[\n -~]+$/);
  });

  it('questions a force that falls while the length grows', async () => {
    const { status, stdout } = await callCli(
      ['band', '--rest', '1'],
      'length_cm,force_kg\n150,20\n200,10\n250,30\n',
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/50 % less force at 2\.00 times/);
  });

  it('reads the same band as a spreadsheet with decimal commas writes it', async () => {
    const other = await callCli(['band', '--rest', '1'], 'length_cm;force_kg\n150,0;10,0\n200;20\n');
    const comma = await callCli(['band', '--rest', '1'], file);
    expect(other).toEqual(comma);
  });

  it('reads the same band in pounds and inches', async () => {
    // 150 cm = 59.0551 in, 10 kgf = 22.0462 lbf (NIST SP 811, appendix B.8)
    const imperial = 'length_in,force_lb\n59.0551,22.0462\n78.7402,44.0925\n';
    const { stdout } = await callCli(['band', '--rest', '39.3701 in'], imperial);
    const metric = await callCli(['band', '--rest', '1'], file);
    expect(placesOfReadings(stdout)).toEqual(placesOfReadings(metric.stdout));
  });

  it.each([
    [
      'a cell that is no number',
      'length_cm,force_kg\n150,ten\n',
      ['--rest', '1'],
      'Line 2, force_kg: "ten" is not a number; write',
    ],
    ['a header without unit', 'length,force\n1,2\n', ['--rest', '1'], 'length_m, length_cm'],
    [
      'a reading within the rest length',
      'length_cm,force_kg\n90,5\n',
      ['--rest', '1'],
      'Line 2, length_cm: 90',
    ],
    ['a pull below nothing', 'length_cm,force_kg\n150,-5\n', ['--rest', '1'], 'Line 2, force_kg: -5'],
    ['an open quotation mark', 'length_cm,force_kg\n"150,5\n', ['--rest', '1'], 'Line 2: The quotes'],
    ['a workbook', 'PK\u0003\u0004', ['--rest', '1'], 'save it there as CSV'],
    [
      'a rest length in cm without its unit',
      file,
      ['--rest', '104'],
      '--rest is 104 m; it must be 0.1 m to 3 m.',
    ],
    ['a rest length that is a mass', file, ['--rest', '20 kg'], '--rest'],
  ])('refuses %s in one line with status 2', async (_, input, args, sentence) => {
    const { status, stdout, stderr } = await callCli(['band', ...args], input);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(sentence);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });
});

/** Row and column of each reading in the picture. */
function placesOfReadings(picture: string): (readonly [row: number, column: number])[] {
  return picture
    .split('\n')
    .filter((line) => line.includes('|'))
    .map((line, row) => [row, line.indexOf('o')] as const)
    .filter(([, column]) => column >= 0);
}
