import { readFile, stat } from 'node:fs/promises';
import { expect, onTestFinished, test } from 'vitest';
import type { CalendarAddresses } from '#contract/calendarFile/calendarAddresses.ts';
import { readCalendar } from '#contract/tests/readCalendar.ts';
import { CannotListen } from '#server/CannotListen.ts';
import { serve } from '#server/serve.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { calendarKey } from './calendarKey.ts';
import { lanAddress } from './lanAddress.ts';

/** A server with a door to telephones, here at an address of this machine alone. */
async function servedWithDoor() {
  const { store, webRoot, folder } = await testApp(smallClub());
  const year = (await store.today()).slice(0, 4);
  const { id, ...day } = (await store.list('day'))[0]!;
  await store.update('day', id, { ...day, date: `${year}-11-25` });
  const telephones = { address: '127.0.0.1', port: 0 };
  const served = await serve({ store, webRoot, port: 0, telephones });
  onTestFinished(() => served.close());
  const addresses = async (method = 'GET') => {
    const path = method === 'GET' ? '/api/calendar' : '/api/calendar/renew';
    return (await (await fetch(served.url + path, { method })).json()) as CalendarAddresses;
  };
  const urlOf = async (lifterId: string | null) =>
    (await addresses()).addresses.find((one) => one.lifterId === lifterId)!.url;
  return { ...served, store, folder, addresses, urlOf };
}

test('an address gives the calendar that the program itself gives, and nothing where the telephone has it', async () => {
  const { url, urlOf } = await servedWithDoor();
  const answer = await fetch(await urlOf(null));
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
  expect(await answer.text()).toBe(await (await fetch(`${url}/api/calendar.ics`)).text());
  const headers = { 'if-none-match': answer.headers.get('etag')! };
  expect((await fetch(await urlOf(null), { headers })).status).toBe(304);
});

test('a day that is moved is the same event at the telephone, on its new date and with a higher sequence', async () => {
  const { store, urlOf } = await servedWithDoor();
  const url = await urlOf(null);
  const fetched = async () => {
    const { events } = readCalendar(await (await fetch(url)).text());
    return events.filter(({ uid }) => uid.startsWith('day-1'));
  };
  const [before, ...others] = await fetched();
  expect(others).toEqual([]);
  const { id, ...day } = (await store.list('day'))[0]!;
  await store.update('day', id, { ...day, date: `${day.date.slice(0, 4)}-12-02` });
  const [moved, ...twice] = await fetched();
  expect(twice).toEqual([]);
  expect(moved).toMatchObject({ uid: before!.uid, status: 'CONFIRMED' });
  expect(moved!.start).toBe(before!.start.replace('11-25', '12-02'));
  expect(moved!.sequence).toBeGreaterThan(before!.sequence);
}, 20_000);

test("a lifter's address gives that lifter's days and meets, and tells nothing of the club's address", async () => {
  const { store, urlOf } = await servedWithDoor();
  const { record } = await store.create('lifter', { name: 'Newly Come', category: 'other' });
  const [whole, own] = [await urlOf(null), await urlOf(record.id)];
  expect(readCalendar(await (await fetch(whole)).text()).events).toHaveLength(2);
  expect(readCalendar(await (await fetch(own)).text()).events).toEqual([]);
  expect(readCalendar(await (await fetch(await urlOf('lifter-1'))).text()).events).toHaveLength(2);
  expect(new Set([whole, own].map((address) => new URL(address).pathname)).size).toBe(2);
});

test('everything else is nothing, in the same words, and nothing can be changed', async () => {
  const { calendarAt, urlOf, store } = await servedWithDoor();
  const right = new URL(await urlOf(null)).pathname;
  const before = await store.latestSeq();
  const answers = await Promise.all(
    [
      ['GET', '/'],
      ['GET', '/api/club'],
      ['GET', '/api/calendar'],
      ['GET', '/api/calendar.ics'],
      ['GET', '/calendar.ics'],
      ['GET', '//calendar.ics'],
      ['GET', `${right}/..`],
      ['GET', right.slice(0, -1)],
      // The secret may begin with either.
      ['GET', right.replace(/^\/./, right[1] === '_' ? '/-' : '/_')],
      ['GET', right.replace(/.\/calendar/, '/calendar')],
      ['GET', '/club/calendar.ics'],
      ['GET', '/lifter-1/calendar.ics'],
      ['POST', right],
      ['DELETE', right],
      ['POST', '/api/calendar/renew'],
      ['DELETE', '/api/records/day/day-1'],
    ].map(async ([method, path]) => {
      const answer = await fetch(calendarAt! + path, { method: method! });
      return [answer.status, await answer.text()];
    }),
  );
  for (const answer of answers) expect(answer).toEqual([404, 'There is nothing here.']);
  expect(await store.latestSeq()).toBe(before);
});

test('renewed addresses are others, and those of before lead to nothing', async () => {
  const { addresses } = await servedWithDoor();
  const before = await addresses();
  const after = await addresses('POST');
  expect(after.addresses.map(({ lifterId }) => lifterId)).toEqual(
    before.addresses.map(({ lifterId }) => lifterId),
  );
  for (const { url } of before.addresses) expect((await fetch(url)).status).toBe(404);
  for (const { url } of after.addresses) expect((await fetch(url)).status).toBe(200);
});

test('the secret outlives the program, is for its owner alone, and is in nothing that the club gives out', async () => {
  const { store, url, urlOf } = await servedWithDoor();
  const part = new URL(await urlOf(null)).pathname.split('/')[1]!;
  expect((await calendarKey(store.path)).partOf(null)).toBe(part);
  const file = `${store.path}.calendar-key`;
  expect((await stat(file)).mode & 0o777).toBe(0o600);
  const secret = (await readFile(file, 'utf8')).trim();
  for (const path of ['/api/archive', '/api/club', '/api/changes', '/api/calendar.ics']) {
    const text = await (await fetch(url + path)).text();
    expect(text).not.toContain(secret);
    expect(text).not.toContain(part);
  }
});

test('a port that is in use is told in one sentence', async () => {
  const { calendarAt, store } = await servedWithDoor();
  const port = Number(new URL(calendarAt!).port);
  const again = serve({ store, port: 0, telephones: { address: '127.0.0.1', port } });
  await expect(again).rejects.toThrow(CannotListen);
  await expect(again).rejects.toThrow(/--calendar-port/);
});

test('only an address of a local network is opened', () => {
  const here = ['127.0.0.1', '192.168.1.5', '203.0.113.9'];
  expect(lanAddress('lan', here)).toBe('192.168.1.5');
  expect(lanAddress('192.168.1.5', here)).toBe('192.168.1.5');
  // RFC 5737: an address of the world at large; nobody's; of every network; one that this machine does not have.
  for (const asked of ['203.0.113.9', '', '0.0.0.0', '192.168.1.6', 'gym.local'])
    expect(() => lanAddress(asked, here)).toThrow(/it must be lan or an address .*: 192\.168\.1\.5\.$/);
  expect(() => lanAddress('lan', ['127.0.0.1', '203.0.113.9'])).toThrow(/no address in a local network/);
  expect(() => lanAddress('lan', [...here, '10.0.0.2'])).toThrow(
    /name the one .*: 192\.168\.1\.5, 10\.0\.0\.2\.$/,
  );
});
