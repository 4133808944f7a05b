import { getPriority } from 'node:os';
import { expect, onTestFinished, test } from 'vitest';
import { Refusal } from '#store/Refusal.ts';
import { newGate, open, work } from './tests/testJobs.ts';
import { workThreads } from './threads.ts';
import { AskerLeft } from './waiting.ts';

function begun() {
  const { run, close } = workThreads(work);
  onTestFinished(close);
  return run;
}

test('what is told of a job is heard in order, and all of it before the answer', async () => {
  const run = begun();
  const told: unknown[][] = [];
  const upTo = 5000;
  const answer = await run('count', upTo, { tell: (...far) => told.push(far) });
  expect(told).toEqual(Array.from({ length: upTo }, (_, i) => [i + 1, upTo]));
  expect(answer).toBe(upTo);
});

test('the jobs of a lane are done in the order in which they were asked for', async () => {
  const run = begun();
  const gate = newGate();
  const ended: string[] = [];
  const note = (word: string) => void ended.push(word);
  const first = run('waitAtNarrow', { gate, answer: 'first' }).then(note);
  const others = ['second', 'third', 'fourth'].map((word) => run('echo', word).then(note));
  open(gate);
  await Promise.all([first, ...others]);
  expect(ended).toEqual(['first', 'second', 'third', 'fourth']);
});

test.runIf(process.platform === 'linux')(
  'a thread gives way to the one that answers, but for a lane that is waited for',
  async () => {
    const run = begun();
    expect(await run('rankOfNarrow', undefined)).toBeGreaterThan(getPriority());
    expect(await run('rankOfWaitedFor', undefined)).toBe(getPriority());
  },
);

test('a job that is cancelled ends though it would never, and frees its thread for the next', async () => {
  const run = begun();
  expect(await run('echo', 'warm')).toBe('warm');
  const gone = new AbortController();
  const endless = run('waitAtNarrow', { gate: newGate(), answer: '' }, { signal: gone.signal });
  const next = run('echo', 'next');
  gone.abort();
  await expect(endless).rejects.toThrow(AskerLeft);
  expect(await next).toBe('next');
});

test('a job that is cancelled before its turn is not begun', async () => {
  const run = begun();
  const gate = newGate();
  const first = run('waitAtNarrow', { gate, answer: 'first' });
  const gone = new AbortController();
  const told: number[] = [];
  const counted = run('count', 3, { signal: gone.signal, tell: (done) => told.push(done) });
  gone.abort();
  open(gate);
  await expect(counted).rejects.toThrow(AskerLeft);
  expect(await first).toBe('first');
  expect(await run('echo', 'next')).toBe('next');
  expect(told).toEqual([]);
});

test.each(['fail', 'refuse'] as const)(
  'a job that throws (%s) answers its own sentence, and the next one is done',
  async (name) => {
    const run = begun();
    const faulty = run(name, 'The bar is missing.');
    const next = run('echo', 'next');
    await expect(faulty).rejects.toThrow('The bar is missing.');
    expect(await next).toBe('next');
  },
);

test('a fault of the program names its job; what a coach is to read comes back as what it was', async () => {
  const run = begun();
  await expect(run('fail', 'No number.')).rejects.toThrow('fail failed in its thread: No number.');
  const database = run('failInDatabase', 'select * from nowhere');
  await expect(database).rejects.toThrow('failInDatabase failed in its thread: no such table: nowhere');
  const refused = await run('refuse', 'Not twice.').catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(Refusal);
  expect(refused).toMatchObject({ reason: 'conflict', field: 'field', message: 'Not twice.' });
});

test('a thread that ends in the midst of a job is told as a fault, and the next job gets another', async () => {
  const run = begun();
  const ended = run('endThread', 3);
  const next = run('echo', 'next');
  await expect(ended).rejects.toThrow('endThread failed in its thread');
  expect(await next).toBe('next');
});
