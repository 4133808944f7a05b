import { EventEmitter, once } from 'node:events';
import { renameSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import { connect, createServer } from 'node:net';
import { text } from 'node:stream/consumers';
import { expect, onTestFinished, test, vi } from 'vitest';
import { millraceClub } from '#demo/millraceClub.ts';
import { solveDay as solveHere } from '#reckon/day/solveDay.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { rehearseDay } from './jobs/dayPlans.ts';
import { work } from './jobs/jobs.ts';
import { workThreads } from './jobs/threads.ts';
import { openOneClub } from './oneClub.ts';
import { serve } from './serve.ts';
import { signPrescription } from './signPrescription.ts';
import { testApp } from './tests/testApp.ts';

async function served(port = 0) {
  const { store, webRoot } = await testApp();
  const running = await serve({ store, port, webRoot });
  onTestFinished(() => running.close());
  return { ...running, store };
}

/** Opens the line of news and hands out its text as far as it has come. */
async function openEvents(url: string, headers: Record<string, string> = {}) {
  const request = get(`${url}/api/events`, { headers });
  const [answer] = (await once(request, 'response')) as [IncomingMessage];
  onTestFinished(() => void request.destroy());
  let text = '';
  answer.setEncoding('utf8');
  answer.on('data', (piece: string) => {
    text += piece;
  });
  const ids = () => [...text.matchAll(/event: change\ndata: .*\nid: (\d+)/g)].map(([, id]) => Number(id));
  return {
    answer,
    async changes(count: number): Promise<number[]> {
      while (ids().length < count) await once(answer, 'data');
      return ids();
    },
    /** Waits until it is said that nothing can be saved, or that all is well again (null). */
    async trouble(): Promise<string | null> {
      for (;;) {
        const said = /event: trouble\ndata: (.*)\n/.exec(text);
        if (said) {
          text = text.replace(said[0], '');
          return (JSON.parse(said[1]!) as { trouble: string | null }).trouble;
        }
        await once(answer, 'data');
      }
    },
    /** Waits for news that estimates are better. */
    async betterEstimates(): Promise<void> {
      while (!text.includes('event: estimates\n')) await once(answer, 'data');
      text = text.replace('event: estimates\n', '');
    },
  };
}

test('the server listens on this machine alone and takes the next port when one is taken', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  onTestFinished(() => void other.close());
  const { port: taken } = other.address() as { port: number };
  const { port, url } = await served(taken);
  expect(port).toBeGreaterThan(taken);
  expect(url).toBe(`http://127.0.0.1:${port}`);
  expect((await fetch(`${url}/api/club`)).status).toBe(200);
});

test.each([
  ['no request at all', 'Good morning\r\n\r\n', 400],
  ['a method that there is not', 'BREW /api/club HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n', 400],
  [
    'two lengths',
    'POST /api/sets HTTP/1.1\r\nHost: a\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n',
    400,
  ],
  ['headers without end', `GET / HTTP/1.1\r\nHost: a\r\nx: ${'x'.repeat(70_000)}\r\n\r\n`, 431],
])('what cannot be read gets one sentence: %s', async (_what, sent, status) => {
  const { port } = await served();
  const line = connect(port, '127.0.0.1');
  line.on('error', () => {});
  line.write(sent);
  const answer = await text(line);
  expect(answer).toMatch(new RegExp(`^HTTP/1.1 ${status} `));
  const { error } = JSON.parse(answer.slice(answer.indexOf('\r\n\r\n')));
  expect(error).toEqual({ field: '', message: expect.stringMatching(/^[^\n]{20,}\.$/) });
});

test('what is under way when the server ends finds its club closed and says nothing of it', async () => {
  const { store, webRoot } = await testApp(smallClub());
  const asked = new EventEmitter();
  const today = async () => {
    asked.emit('asked');
    await once(asked, 'go on');
    return store.today();
  };
  const said = vi.spyOn(console, 'error').mockReturnValue();
  onTestFinished(() => said.mockRestore());
  const begun = once(asked, 'asked');
  const running = await serve({ store: { ...store, today }, port: 0, webRoot });
  await begun;
  await running.close();
  await store.close();
  asked.emit('go on');
  await new Promise((resolve) => setImmediate(resolve));
  expect(said.mock.calls).toEqual([]);
});

test('a listener hears each change, and after a broken line what it has missed', async () => {
  const { url, store } = await served();
  const first = await openEvents(url, { 'accept-encoding': 'gzip' });
  expect(first.answer.headers['content-encoding']).toBeUndefined();
  await store.create('bar', { label: 'a', massKg: 20 });
  expect(await first.changes(1)).toEqual([1]);
  await store.create('bar', { label: 'b', massKg: 20 });
  expect(await first.changes(2)).toEqual([1, 2]);
  await store.create('bar', { label: 'c', massKg: 20 });
  const resumed = await openEvents(url, { 'last-event-id': '1' });
  expect(await resumed.changes(1)).toEqual([3]);
});

test('a listener hears at once of what a thread puts in the place of the club or adds to its log', async () => {
  // Nobody looks now and then.
  const looking = vi.spyOn(globalThis, 'setInterval').mockReturnValue({ unref() {} } as NodeJS.Timeout);
  onTestFinished(() => looking.mockRestore());
  const { url, store } = await served();
  await store.importRecords(smallClub());
  const before = await store.latestSeq();
  const events = await openEvents(url);
  const post = (path: string, body: string) =>
    fetch(`${url}/api${path}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body });
  const archive = await (await fetch(`${url}/api/archive`)).text();
  expect((await post('/archive?replace=1', archive)).status).toBe(200);
  expect(await events.changes(1)).toEqual([before + 1]);
  const line = `2026-11-25,${smallClub().lifter[0]!.name},squat,100,1,1`;
  const text = `date,lifter,lift,bar_kg,reps,made\n${line}\n`;
  expect(await (await post('/sets/import', JSON.stringify({ text }))).json()).toMatchObject({ added: 1 });
  expect(await events.changes(2)).toEqual([before + 1, before + 2]);
});

test('a listener hears what another program writes to the same file', async () => {
  const { url, store } = await served();
  const events = await openEvents(url);
  const other = await openOneClub(store.path, { name: 'a test' });
  await other.create('bar', { label: 'a', massKg: 20 });
  await other.close();
  expect(await events.changes(1)).toEqual([1]);
});

test('where the file is taken away, every listener and every write is told; the archive is still given out', async () => {
  const { url, store } = await served();
  await store.importRecords(smallClub());
  const archive = async () => (await fetch(`${url}/api/archive`)).text();
  const before = await archive();
  const events = await openEvents(url);
  expect(await events.trouble()).toBeNull();
  renameSync(store.path, `${store.path}.gone`);
  const sentence = await events.trouble();
  expect(sentence).toContain(store.path);
  const bar = { label: 'New bar', massKg: 20 };
  const writes = [
    ['/api/records/bar', bar],
    ['/api/sets', { sets: [squatSet()] }],
    ['/api/archive?replace=1', JSON.parse(before)],
    ['/api/sets/import', { text: 'date,lifter,lift,bar kg,reps\n2026-01-13,Ida Quill,deadlift,100,5\n' }],
  ] as const;
  for (const [path, body] of writes) {
    const answer = await fetch(`${url}${path}`, { method: 'POST', ...json(body) });
    expect(answer.status).toBe(503);
    expect(await answer.json()).toMatchObject({ error: { message: sentence } });
  }
  expect(await archive()).toBe(before);
  const late = await openEvents(url);
  expect(await late.trouble()).toBe(sentence);
  renameSync(`${store.path}.gone`, store.path);
  expect(await events.trouble()).toBeNull();
  expect((await fetch(`${url}/api/records/bar`, { method: 'POST', ...json(bar) })).status).toBe(201);
});

test('closing ends open lines of news', async () => {
  const { store, webRoot } = await testApp();
  const running = await serve({ store, port: 0, webRoot });
  const { answer } = await openEvents(running.url);
  answer.resume();
  const ended = once(answer, 'close').catch(() => {});
  answer.on('error', () => {});
  await running.close();
  await ended;
  await expect(fetch(running.url)).rejects.toThrow();
});

test('while a day is solved, every other request is answered', async () => {
  const { url, store } = await served();
  await store.importRecords(millraceClub('2026-11-25'));
  const [day] = await store.list('day');
  let solved = false;
  const solving = fetch(`${url}/api/days/${day!.id}/solve`, { method: 'POST' }).finally(() => {
    solved = true;
  });
  const answeredBefore = [];
  for (let i = 0; i < 3; i += 1) {
    expect((await fetch(`${url}/api/club`)).status).toBe(200);
    answeredBefore.push(!solved);
  }
  expect(answeredBefore).toEqual([true, true, true]);
  const answer = await solving;
  expect(answer.status).toBe(200);
  expect(await answer.json()).toMatchObject(signPrescription((await store.latestPrescription(day!.id))!));
});

test('an estimate from the threads is the one that would be made here', async () => {
  const { store, ask, webRoot } = await testApp(smallClub());
  const running = await serve({ store, port: 0, webRoot });
  onTestFinished(() => running.close());
  const path = '/api/estimates?lifterId=lifter-1&on=2026-11-25';
  const answer = await fetch(`${running.url}${path}`);
  expect(await answer.json()).toEqual((await ask('GET', path)).json);
});

test('a log that is taken in is estimated before anybody asks', async () => {
  const { url, store } = await served();
  await store.importRecords({ ...smallClub(), best: [] });
  const progress = async () => (await fetch(`${url}/api/estimates/progress`)).json();
  expect(await progress()).toEqual({ done: 0, total: 0, running: false });
  const text = 'date,lifter,lift,bar kg,reps\n2026-01-13,Ida Quill,deadlift,100,5\n';
  const taken = await fetch(`${url}/api/sets/import`, { method: 'POST', ...json({ text }) });
  expect(taken.status).toBe(200);
  let seen = await progress();
  while (seen.total === 0 || seen.running) seen = await progress();
  const { estimates } = await (await fetch(`${url}/api/estimates/all`)).json();
  expect(estimates).toMatchObject([{ lift: 'deadlift', setCount: 1, upToDate: true }]);
});

test('a listener hears when the whole club was worked out, and when a log was weighed after a set was taken in', async () => {
  const { url, store } = await served();
  await store.importRecords(smallClub());
  const events = await openEvents(url);
  await fetch(`${url}/api/estimates/all`);
  await events.betterEstimates();
  const progress = await (await fetch(`${url}/api/estimates/progress`)).json();
  expect(progress).toMatchObject({ running: false });

  const today = (await (await fetch(`${url}/api/estimates/all`)).json()).estimates[0].on;
  const taken = async () =>
    (await (await fetch(`${url}/api/estimates?lifterId=lifter-1`)).json()).estimates[0].takenIn;
  expect(await taken()).toBe(0);
  await store.logSets([squatSet({ doneOn: today, setup: { start: { way: 'free' }, barKg: 90 } })]);
  expect(await taken()).toBe(1);
  await events.betterEstimates();
  expect(await taken()).toBe(0);
});

test('while a file of 30,000 sets is taken in, every other request is answered; then all of them are there', async () => {
  const { url, store } = await served();
  await store.importRecords(smallClub());
  const lines = Array.from({ length: 30_000 }, (_, i) => {
    const day = new Date(Date.UTC(2015, 0, 1 + Math.floor(i / 10))).toISOString().slice(0, 10);
    return `${day},Ida Quill,bench,${40 + (i % 10)},5`;
  });
  const text = ['date,lifter,lift,bar kg,reps', ...lines].join('\n');
  let taken = false;
  const taking = fetch(`${url}/api/sets/import`, { method: 'POST', ...json({ text }) }).finally(() => {
    taken = true;
  });
  const answeredBefore = [];
  for (const path of ['/api/club', '/api/sets', '/api/sets?lifterId=lifter-1', '/api/club']) {
    const answer = await fetch(`${url}${path}`);
    expect(answer.status).toBe(200);
    const { sets = [] } = await answer.json();
    answeredBefore.push(!taken);
    expect(sets).toEqual([]);
  }
  expect(answeredBefore).toEqual([true, true, true, true]);
  expect(await (await taking).json()).toMatchObject({ rows: 30_000, added: 30_000, problems: [] });
  expect(await store.loggedSets()).toHaveLength(30_000);
  expect(await store.latestSeq()).toBe(2);
});

test('closing in the midst of a run over the club is heard by nobody', async () => {
  const said = vi.spyOn(console, 'error');
  onTestFinished(() => said.mockRestore());
  const { store, webRoot } = await testApp(smallClub());
  const running = await serve({ store, port: 0, webRoot });
  const answer = await fetch(`${running.url}/api/estimates/all`);
  expect(await answer.json()).toMatchObject({ progress: { running: true } });
  await running.close();
  await expect(fetch(running.url)).rejects.toThrow();
  expect(said).not.toHaveBeenCalled();
});

test('after a rehearsal, with a day to rehearse or without, a day is answered as before', async () => {
  const { run, close } = workThreads(work);
  onTestFinished(close);
  const club = millraceClub('2026-11-25');
  const day = club.day[0]!;
  await rehearseDay(run, { ...club, day: [] });
  // A day that cannot be solved is rehearsed as far as it goes.
  await rehearseDay(run, { ...club, lifter: [] });
  await rehearseDay(run, club);
  const known = { estimates: [], awaited: [] };
  expect(await run('solveDay', { records: club, day, ...known })).toEqual(solveHere(club, day));
});

test('what a day misses in the records comes back from the solver as one sentence', async () => {
  const { run, close } = workThreads(work);
  onTestFinished(close);
  const club = smallClub();
  // The day names a lifter who is not in the records.
  const asked = { records: { ...club, lifter: [] }, day: club.day[0]!, estimates: [], awaited: [] };
  await expect(run('solveDay', asked)).rejects.toThrow(CannotAssemble);
});

function json(body: object) {
  return { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } };
}
