import { expect, it } from 'vitest';
import { activeParameters } from './activeParameters.ts';
import type { LiftModel } from './readGroup.ts';
import type { EffortGroup, Session } from './sessions.ts';

const nothing = { mean: 0, count: 0 };
const told = { mean: 1, count: 1 };
/** A straight raw single of a free start that went, of which nothing more was written down. */
const single = {
  model: { start: 'free', bandShare: 0 },
  equipment: null,
  platform: false,
  made: 1,
  missed: false,
  fastestMps: nothing,
  peakMps: nothing,
  reserve: nothing,
  stopped: nothing,
};
const lift = (start: string, rebound = 0.3) =>
  ({ reference: { start }, shape: { rebound } }) as unknown as LiftModel;
const session = (...groups: object[]): Session => ({
  day: 0,
  groups: groups.map((group) => ({ ...single, ...group }) as unknown as EffortGroup),
});
const tells = (group: object, of = lift('free')) => activeParameters([session({}, group)], of);
const from = (start: string, bandShare = 0) => ({ model: { start, bandShare } });

it('is nothing that singles of one day tell but strength, and of several days how it changes', () => {
  expect(tells({})).toEqual([]);
  expect(tells({ made: 0, missed: true })).toEqual([]);
  expect(activeParameters([session({}), session({})], lift('free'))).toEqual([
    'weekGain',
    'lnDaySd',
    'lnWeekSd',
  ]);
});

const speeds = ['lnMaxSpeed', 'lnRebound', 'speedOffset', 'speedSlope'];
const tiring = ['lnTiring', 'tiringBend'];
it.each([
  ['a mean speed', { fastestMps: told }, speeds],
  ['a peak speed', { peakMps: told }, speeds],
  ['several reps', { made: 2 }, tiring],
  ['a miss after a rep', { made: 1, missed: true }, tiring],
  ['reps left of a single', { reserve: told }, tiring],
  ['bands from below', from('free', 0.2), ['slope', 'bandError']],
  ['bands from above', from('free', -0.2), ['slope', 'bandError']],
  ['where a miss stopped', { made: 0, missed: true, stopped: told }, ['slope']],
  ['pins', from('pins'), ['slope', 'lnRebound', 'startError']],
  ['a box', from('box'), ['slope', 'lnRebound', 'heldRebound', 'startError']],
  ['boards', from('boards'), ['slope', 'lnRebound', 'heldRebound', 'startError']],
  ['a pause', from('paused'), ['slope', 'lnRebound', 'heldRebound', 'startError']],
  ['wraps', { equipment: 'wraps' }, ['wraps']],
  ['a single-ply suit', { equipment: 'singlePly' }, ['singlePly']],
  ['a multi-ply suit', { equipment: 'multiPly' }, ['multiPly']],
  ['other gear', { equipment: 'otherGear' }, ['otherGear']],
  ['the platform', { platform: true }, ['platform']],
])('%s tells of what it depends on, and of nothing else', (_, group, parameters) => {
  expect(tells(group)).toEqual(parameters);
});

it('tells of a rebound only where there is one, and of a held one where the straight lift itself is held', () => {
  expect(tells(from('box'), lift('free', 0))).toEqual(['slope', 'startError']);
  expect(tells({ fastestMps: told }, lift('free', 0))).not.toContain('lnRebound');
  expect(activeParameters([session(from('paused'))], lift('paused'))).toEqual(['heldRebound']);
});
