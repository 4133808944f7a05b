import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCli } from '../runCli.ts';
import { callCli } from '../tests/callCli.ts';

let folder = '';
const club = (name: string) => ['--club', join(folder, name)];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rackwright-transfer-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('rackwright import and export', () => {
  it('take a bar in as CSV and give it back, and the whole club as an archive byte for byte', async () => {
    // Through the real door and its pipes; what follows has no need of a process of its own.
    const taken = await runCli(['import', 'bar', ...club('a.sqlite')], 'label,mass_kg\nLong bar,20.4\n');
    expect(taken).toMatchObject({ status: 0, stderr: '' });
    expect((await callCli(['export', 'bar', ...club('a.sqlite')])).stdout).toContain('Long bar,20.4');

    const archive = await runCli(['export', 'archive', ...club('a.sqlite')]);
    const restored = await callCli(['import', 'archive', '--replace', ...club('b.sqlite')], archive.stdout);
    expect(restored.status).toBe(0);
    expect((await callCli(['export', 'archive', ...club('b.sqlite')])).stdout).toBe(archive.stdout);
  });

  it('name line and column of a wrong cell and take nothing of the file', async () => {
    const file = join(folder, 'bars.csv');
    await writeFile(file, 'label,mass_kg\nShort bar,15\nLight bar,heavy\n');
    const refused = await callCli(['import', 'bar', file, ...club('c.sqlite')]);
    expect(refused).toMatchObject({ status: 2, stdout: '' });
    expect(refused.stderr).toMatch(/^Line 3, mass_kg: /);
    expect((await callCli(['export', 'bar', ...club('c.sqlite')])).stdout).not.toContain('Short bar');
  });

  it('take a log in by the headers of a spreadsheet, say first what they would do, and give it back', async () => {
    const here = club('log.sqlite');
    await callCli(['import', 'lifter', ...here], 'name,category\nIda Quill,women\n');
    const file = join(folder, 'log.csv');
    await writeFile(file, 'Who;Day;Lift;Weight (lb);Reps;Sky\nIda Quill;13/01/2026;Bench;100;5;grey\n');
    const dry = await callCli(['import', 'log', file, '--dry-run', ...here]);
    expect(dry).toMatchObject({ status: 0, stderr: '' });
    expect(dry.stdout).toMatch(/^bar +Weight \(lb\) in lb$/m);
    expect(dry.stdout).toContain('One column of the file is not taken: Sky.\n');
    expect(dry.stdout).toContain('Would import 1 line of the log; sets: 1 new');
    const taken = await callCli(['import', 'log', file, ...here]);
    expect(taken.stdout).toContain('From 2026-01-13 to 2026-01-13, by Ida Quill.');
    const out = await callCli(['export', 'log', ...here]);
    // NIST SP 811: 100 lb = 45.359237 kg.
    expect(out.stdout).toContain('2026-01-13,Ida Quill,bench,1,free,,raw,45.359237,');
    const wrong = await callCli(['import', 'log', '--column', 'date=Tag', file, ...here]);
    expect(wrong).toMatchObject({ status: 2, stdout: '' });
    expect(wrong.stderr).toContain('The file has no column "Tag"; it has Who, Day, Lift, ');
  });

  it('find the other columns of a log by likeness where one is named', async () => {
    const here = club('named.sqlite');
    await callCli(['import', 'lifter', ...here], 'name,category\nIda Quill,women\n');
    const text = 'Who,Day,Lift,Load (kg),Reps\nIda Quill,2026-01-13,Bench,50,5\n';
    const dry = await callCli(['import', 'log', '--column', 'bar=Load (kg)', '--dry-run', ...here], text);
    expect(dry).toMatchObject({ status: 0, stderr: '' });
    expect(dry.stdout).toMatch(/^lifter +Who$/m);
    expect(dry.stdout).toContain('Would import 1 line of the log; sets: 1 new');
    // Of the two that are needed and missing the first is asked for; the date is there.
    const odd = await callCli(['import', 'log', '--dry-run', ...here], text.replace('Load (kg),Reps', 'A,B'));
    expect(odd.status).toBe(2);
    expect(odd.stderr).toContain('The file has Who, Day, Lift, A, B; --column bar=HEADER says');
    const twice = ['--column', 'bar=Reps', '--column', 'bar=Load (kg)'];
    const refused = await callCli(['import', 'log', ...twice, ...here], text);
    expect(refused).toMatchObject({ status: 2, stdout: '' });
    expect(refused.stderr).toContain('--column names bar twice');
  });

  it('name sets of a log that look like a nought too many, and take them as they are told to', async () => {
    const here = club('slips.sqlite');
    await callCli(['import', 'lifter', ...here], 'name,category\nIda Quill,women\n');
    const lines = ['06', '13', '20', '27'].flatMap((day, i) =>
      ['01', '02', '03'].map(
        (month) => `2026-${month}-${day},Ida Quill,squat,${i === 2 && month === '02' ? 900 : 90},5\n`,
      ),
    );
    const text = `date,lifter,lift,bar kg,reps\n${lines.join('')}`;
    const dry = await callCli(['import', 'log', '--dry-run', '--slips', 'convert', ...here], text);
    expect(dry).toMatchObject({ status: 0, stderr: '' });
    expect(dry.stdout).toContain(
      'This squat by Ida Quill on 2026-02-20 looks like a nought too many.\n  900 kg would be 90.0 kg, sets: 1\n',
    );
    await callCli(['import', 'log', '--slips', 'convert', ...here], text);
    const out = (await callCli(['export', 'log', ...here])).stdout;
    expect(out.match(/,raw,90,/g)).toHaveLength(12);
    expect(out).not.toContain('900');
  });

  it.each([
    [['import', 'log', '--replace'], '--replace is for an archive alone'],
    [['import', 'lifter', '--column', 'name=Who'], '--column is for the log alone'],
    [['import', 'lifter', '--slips', 'keep'], '--slips is for the log alone'],
    [['import', 'log'], 'There is no club in '],
  ])('refuse what does not go together and found no club for it: %j', async (args, said) => {
    const refused = await callCli([...args, ...club('apart.sqlite')], 'name,category\nIda Quill,women\n');
    expect(refused).toMatchObject({ stdout: '' });
    expect(refused.status).not.toBe(0);
    expect(refused.stderr).toContain(said);
    expect(existsSync(join(folder, 'apart.sqlite'))).toBe(false);
  });

  it('say what an archive holds beside the club and what is wrong in it, and change or found nothing', async () => {
    await callCli(['import', 'bar', ...club('from.sqlite')], 'label,mass_kg\nLong bar,20.4\nShort bar,15\n');
    const archive = await callCli(['export', 'archive', ...club('from.sqlite')]);
    await callCli(['import', 'bar', ...club('into.sqlite')], 'label,mass_kg\nSpare bar,20\n');
    const before = (await callCli(['export', 'archive', ...club('into.sqlite')])).stdout;
    // Whoever says both wants to see first.
    const both = ['import', 'archive', '--dry-run', '--replace'];
    const tried = await callCli([...both, ...club('into.sqlite')], archive.stdout);
    expect(tried).toMatchObject({ status: 0, stderr: '' });
    expect(tried.stdout).toMatch(/^bars +2 +1$/m);
    expect(tried.stdout).toContain('would be replaced');
    expect((await callCli(['export', 'archive', ...club('into.sqlite')])).stdout).toBe(before);

    const line = 1 + archive.stdout.split('\n').findIndex((text) => text.includes('20.4'));
    const wrong = archive.stdout.replace('20.4', '-20.4');
    const refused = await callCli(['import', 'archive', '--dry-run', ...club('none.sqlite')], wrong);
    expect(refused).toMatchObject({ status: 2, stdout: '' });
    expect(refused.stderr).toMatch(new RegExp(`^Line ${line}: records\\.bar\\[0\\]\\.massKg is -20\\.4; `));
    expect(existsSync(join(folder, 'none.sqlite'))).toBe(false);
  });

  it('refuse to put an archive over a club unasked', async () => {
    const refused = await callCli(['import', 'archive', ...club('d.sqlite')], '{}');
    expect(refused.status).toBe(2);
    expect(existsSync(join(folder, 'd.sqlite'))).toBe(false);
  });

  it('do not found a club for a mistyped file name', async () => {
    const refused = await callCli(['export', 'archive', ...club('typo.sqlite')]);
    expect(refused).toMatchObject({ status: 1, stdout: '' });
    expect(refused.stderr).toContain('There is no club in');
    expect(existsSync(join(folder, 'typo.sqlite'))).toBe(false);
  });
});

describe('rackwright', () => {
  it('explains itself, and ends with 2 for a command or option that it does not have', async () => {
    const help = await runCli(['--help']);
    expect(help).toMatchObject({ status: 0, stderr: '' });
    for (const command of ['serve', 'day', 'band', 'import', 'export', 'compute'])
      expect(help.stdout).toContain(command);
    expect(await runCli(['sparkle'])).toMatchObject({ status: 2, stdout: '' });
    expect(await callCli(['band', '--sparkle'])).toMatchObject({ status: 2, stdout: '' });
  });
});
