import { describe, expect, it } from 'vitest';
import { callCli } from '../tests/callCli.ts';

/** Two squats of 60 cm, half a cosine each way, up in 1 s and 2 s; 50 readings a second. */
function twoSquats(): string {
  const rows = ['t_s,z_m'];
  const ways = [
    { lastsS: 1, fromM: 1.5, toM: 1.5 },
    ...[1, 2].flatMap((lastsS) => [
      { lastsS: 1, fromM: 1.5, toM: 0.9 },
      { lastsS, fromM: 0.9, toM: 1.5 },
      { lastsS: 1, fromM: 1.5, toM: 1.5 },
    ]),
  ];
  let beganS = 0;
  for (const { lastsS, fromM, toM } of ways) {
    for (let tS = 0; tS < lastsS - 1e-9; tS += 0.02) {
      const zM = fromM + ((toM - fromM) * (1 - Math.cos((Math.PI * tS) / lastsS))) / 2;
      rows.push(`${(beganS + tS).toFixed(2)},${zM.toFixed(4)}`);
    }
    beganS += lastsS;
  }
  return rows.join('\n');
}

describe('rackwright track', () => {
  it('lists the reps with their speeds', async () => {
    const { status, stdout, stderr } = await callCli(['track'], twoSquats());
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.match(/made/g)).toHaveLength(2);
    expect(stdout).toMatch(/lockout 15\d\.\d cm|lockout 149\.\d cm/);
  });

  it('gives the same as JSON, in SI', async () => {
    const { stdout } = await callCli(['track', '--json'], twoSquats());
    const { reps } = JSON.parse(stdout) as { reps: { made: boolean; meanSpeedMps: number }[] };
    // 0.6 m in 1 s and in 2 s.
    expect(reps.map(({ made }) => made)).toEqual([true, true]);
    expect(Math.abs(reps[0]!.meanSpeedMps - 0.6)).toBeLessThan(0.03);
    expect(Math.abs(reps[1]!.meanSpeedMps - 0.3)).toBeLessThan(0.02);
  });

  it('refuses a file without units in one line with status 2', async () => {
    const { status, stdout, stderr } = await callCli(['track'], 't,z\n0,1\n');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.trimEnd()).toBe('Line 1, t: Name the unit in the first line: t_s, t_ms, t_min.');
  });
});
