import { describe, expect, it } from 'vitest';
import { readTrack } from './readTrack.ts';

/** 30 readings at 50 a second of a bar rising 2 mm each. */
function table(header: string, row: (i: number) => string, count = 30): string {
  return [header, ...Array.from({ length: count }, (_, i) => row(i))].join('\n');
}
const points = (text: string) => {
  const read = readTrack(text);
  if ('problems' in read) throw new Error(read.problems.map(({ message }) => message).join(' '));
  return read.points;
};
const expected = { tS: 0.2, zM: 0.92, xM: 0.01 };

describe('readTrack', () => {
  it.each([
    ['SI', 't_s,z_m,x_m', (i: number) => `${i / 50},${0.9 + i / 500},${i / 1000}`],
    [
      'milliseconds and centimetres in brackets',
      'Time (ms);Height [cm];x (cm)',
      (i: number) => `${20 * i};${90 + i / 5};${i / 10}`,
    ],
    [
      'decimal commas between semicolons',
      't_s;z_m;x_m',
      (i: number) => [i / 50, 0.9 + i / 500, i / 1000].map((v) => v.toFixed(4).replace('.', ',')).join(';'),
    ],
    [
      'tabs, and columns that are not ours',
      'frame\tx_mm\ty_mm\ttime_s',
      (i: number) => `${i}\t${i}\t${900 + 2 * i}\t${i / 50}`,
    ],
  ])('reads the same track from %s', (_, header, row) => {
    const tenth = points(table(header, row))[10]!;
    for (const key of ['tS', 'zM', 'xM'] as const) expect(tenth[key]).toBeCloseTo(expected[key], 9);
  });

  it('reads inches by 0.0254 m', () => {
    expect(points(table('t_s,z_in', (i) => `${i / 50},${40 + i}`))[1]).toEqual({
      tS: 0.02,
      zM: 41 * 0.0254,
      xM: null,
    });
  });

  it('passes over lines where the bar was not seen', () => {
    const read = readTrack(table('t_s,z_m', (i) => (i === 5 ? '0.1,' : `${i / 50},1`)));
    expect(read).toMatchObject({ passedOver: 1 });
  });

  it.each([
    ['no time', table('frame,z_m', (i) => `${i},1`), 1, 'no column of the time'],
    ['no height', table('t_s,bar', (i) => `${i / 50},1`), 1, 'no column of the bar height'],
    ['no unit', table('t_s,z', (i) => `${i / 50},1`), 1, 'z_m, z_cm, z_mm, z_in'],
    ['a word', table('t_s,z_m', (i) => (i === 3 ? '0.06,low' : `${i / 50},1`)), 5, '"low" is not a number'],
    ['time going back', table('t_s,z_m', (i) => (i === 3 ? '0.01,1' : `${i / 50},1`)), 5, 'not later'],
    ['millimetres called metres', table('t_s,z_m', (i) => `${i / 50},900`), 2, 'is the unit right?'],
    ['few readings', table('t_s,z_m', (i) => `${i / 50},1`, 5), 1, '20 readings or more'],
    ['few a second', table('t_s,z_m', (i) => `${i / 5},1`), 1, '5.0 readings a second'],
  ])('refuses %s in one sentence with its line', (_, text, line, sentence) => {
    const read = readTrack(text);
    if (!('problems' in read)) throw new Error('was taken');
    expect(read.problems[0]!.line).toBe(line);
    expect(read.problems[0]!.message).toContain(sentence);
  });
});
