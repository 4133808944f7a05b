import { expect, test } from 'vitest';
import { newsTogether } from './newsTogether.ts';

const untilTimersWentOff = () => new Promise((resolve) => setTimeout(() => setTimeout(resolve)));

test('what is heard in one moment is fetched together, and what comes meanwhile in one go after it', async () => {
  const fetched: { named: string[]; end: () => void }[] = [];
  const hear = newsTogether<'change' | 'estimates'>(
    (named) => new Promise((end) => fetched.push({ named: [...named].toSorted(), end })),
  );
  const named = () => fetched.map((one) => one.named);
  hear('estimates');
  hear('change');
  hear('estimates');
  expect(named()).toEqual([]);
  await untilTimersWentOff();
  expect(named()).toEqual([['change', 'estimates']]);
  hear('change');
  hear('change');
  await untilTimersWentOff();
  expect(fetched).toHaveLength(1);
  fetched[0]!.end();
  await untilTimersWentOff();
  expect(named()).toEqual([['change', 'estimates'], ['change']]);
  fetched[1]!.end();
  await untilTimersWentOff();
  expect(fetched).toHaveLength(2);
});
