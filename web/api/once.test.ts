import { expect, test } from 'vitest';
import { once } from './once.ts';
import { RequestError } from './request.ts';

/** Sends these sets and gives back their ids; `fault` is what comes in place of an answer. */
async function idsOf(sets: object[], fault?: Error): Promise<readonly string[]> {
  let sent: readonly string[] = [];
  const sending = once(sets, async (ids) => {
    sent = ids;
    if (fault) throw fault;
  });
  await (fault ? expect(sending).rejects.toBe(fault) : sending);
  return sent;
}

const squat = { lift: 'squat', made: 2 };
const noAnswer = new RequestError(0, 'No answer.', null);

test('sets that are sent again after no answer bear the ids of the first try; acknowledged ones never come twice', async () => {
  const first = await idsOf([squat, squat], noAnswer);
  expect(new Set(first).size).toBe(2);
  expect(await idsOf([squat, squat], new RequestError(503, 'Held.', ''))).toEqual(first);
  expect(await idsOf([squat, squat])).toEqual(first);
  const next = await idsOf([squat, squat]);
  expect(next.filter((id) => first.includes(id))).toEqual([]);
});

test('other sets, and sets that were refused, bear new ids', async () => {
  const first = await idsOf([squat], noAnswer);
  expect(await idsOf([{ ...squat, made: 1 }], noAnswer)).not.toEqual(first);
  const refused = await idsOf([squat], new RequestError(400, 'Wrong.', 'made'));
  expect(refused).toEqual(first);
  expect(await idsOf([squat])).not.toEqual(first);
});
