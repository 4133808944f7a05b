import { expect, test } from 'vitest';
import { shippedMethods } from './shipped/shippedMethods.ts';
import { twinSentence } from './twinSentence.ts';

const [first, second] = shippedMethods;
const season = [{ id: 'spring', title: 'Spring', methodId: 'one', fromOn: '2027-01-04', note: '' }];

test('of two methods of one name and version each says which seasons follow it; a single one says nothing', () => {
  const twins = ['one', 'two'].map((id) => ({ id, methodDocument: first! }));
  const club = { method: [...twins, { id: 'three', methodDocument: second! }], season };
  expect(twinSentence(club, 'one')).toContain('this one is followed by Spring');
  expect(twinSentence(club, 'two')).toContain('no season follows this one');
  expect(twinSentence(club, 'three')).toBeNull();
  expect(twinSentence(club, null)).toBeNull();
  const next = { id: 'two', methodDocument: { ...first!, version: first!.version + 1 } };
  expect(twinSentence({ method: [twins[0]!, next], season }, 'one')).toBeNull();
});
