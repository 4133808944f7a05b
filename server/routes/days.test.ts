import { describe, expect, test } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

describe('a training day', () => {
  test('is solved, kept, and read again as it was solved', async () => {
    const { ask, store } = await testApp(smallClub());
    const [day] = await store.list('day');
    const before = await ask('GET', `/api/days/${day!.id}/prescription`);
    expect(before).toMatchObject({ status: 404, json: { error: { field: 'id' } } });
    const first = await ask('POST', `/api/days/${day!.id}/solve`);
    expect(first).toMatchObject({ status: 200, json: { dayId: day!.id, number: 1 } });
    expect(await ask('GET', `/api/days/${day!.id}/prescription`)).toEqual(first);
    const second = await ask('POST', `/api/days/${day!.id}/solve`);
    expect(second.json.number).toBe(2);
    expect(await ask('GET', `/api/days/${day!.id}/prescriptions/1`)).toEqual(first);
    expect(await ask('GET', `/api/days/${day!.id}/prescriptions/3`)).toMatchObject({ status: 404 });
    expect(second.json.document).toEqual(first.json.document);
    expect((await store.snapshot()).prescriptions).toEqual([first.json, second.json]);
  });

  test('that the club does not have is not solved', async () => {
    const { ask } = await testApp(smallClub());
    expect(await ask('POST', '/api/days/day-9/solve')).toMatchObject({
      status: 404,
      json: { error: { field: 'id' } },
    });
  });
});
