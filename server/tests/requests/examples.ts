import { nothingBeside } from '#contract/archive/archiveContent.ts';
import { writeArchive } from '#contract/archive/writeArchive.ts';
import { kindNames } from '#contract/records/allKinds.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

/**
 * Documents that are taken, by the address that takes them. What the description leaves open between fields (a lockout above the bottom,
 * a reading at another length) chance alone hardly meets; what is changed in one place of these does.
 */
export async function examples(): Promise<Record<string, unknown[]>> {
  const club = smallClub();
  const records = kindNames.flatMap((kind) => {
    const given = club[kind].map((record) => withoutId(record));
    return [`/api/records/${kind}`, `/api/records/${kind}/{id}`].map((path) => [path, given] as const);
  });
  return {
    ...Object.fromEntries(records),
    '/api/sets': [{ sets: [squatSet(), squatSet({ reps: 5, made: 4, rpe: 9 })] }],
    '/api/sets/{id}/correct': [squatSet({ reps: 3, made: 3 })],
    '/api/sets/correct': [{ corrections: [{ id: 'set-1', set: squatSet({ reps: 3, made: 3 }) }] }],
    '/api/sets/import': [{ text: 'date,lifter,lift,bar kg,reps\n2026-01-13,Ida Quill,deadlift,100,5\n' }],
    '/api/archive': [JSON.parse(await writeArchive({ ...nothingBeside, records: club }))],
    '/api/days/{id}/retelling': [{ number: 1 }, { number: 1, by: 'words' }],
    '/api/seasons/{id}/taken': [{ again: null }, { again: 1 }],
    ...computed,
  };
}

function withoutId({ id: _id, ...fields }: { id: string }): object {
  return fields;
}

const anchor = { x_m: 0, y_m: 0, z_m: 0 };
const readings = [
  { length_m: 0.4, force_N: 100 },
  { length_m: 0.7, force_N: 190 },
  { length_m: 1, force_N: 300 },
];
const band = { restLength_m: 0.3, readings, hookup: 'single', anchor, count: 2 };
const chain = { massPerMetre_kg: 5, length_m: 1.2, attachBelowBar_m: 0.1 };
const travel = { bottom_m: 0.4, lockout_m: 1 };
const load = { bar_kg: 100, ...travel, bands: [band], chains: [{ ...chain, count: 2 }] };
const shape = { slope: 0.3, curvature: 0, maxSpeed_mps: 2, rebound: 0.1, reboundTime_s: 1, strainAfter_s: 3 };
const capability = { ...shape, strength_N: 4000, strainTime_s: 5, movedBody_kg: 80 };
const gear = {
  bar_kg: 20,
  collars_kg: 5,
  discs: [
    { mass_kg: 20, pairs: 4 },
    { mass_kg: 2.5, pairs: 2 },
  ],
  hookups: ['thin', 'wide'].map((bandPairId) => ({ bandPairId, hookupId: 'floor', bands: [band] })),
  chains: [{ chainPairId: 'chain', ...chain, pairs: 1 }],
};
const targets = [
  { basis: 'bottom', share: 0.5 },
  { basis: 'lockout', share: 0.7 },
];
const task = { capability, ...travel, reference_kg: 200 };
const byPercent = { ...task, aim: { by: 'percent', targets } };
const bySpeed = {
  ...task,
  aim: { by: 'speed', from_mps: 0.4, to_mps: 0.6, set: { reps: 3, tiring_per_s: 0.01 } },
};
const fixed = { bar_kg: 60, bands: [{ bandPairId: 'thin', hookupId: 'floor' }], chains: [] };
const bounds = { leastBarShare: 0.1, leastBandShare: 0.05, mostBandShare: 0.9, mostPairs: 2 };
const seats = [
  { lifterId: 'a', rackId: 'one', ...byPercent },
  { lifterId: 'b', rackId: 'two', ...bySpeed },
  { lifterId: 'c', rackId: 'two', ...byPercent, fixed },
];
const racks = ['one', 'two'].map((rackId) => ({ rackId, gear }));

const computed = {
  '/api/compute/band-curve': [{ restLength_m: 0.3, readings, at_m: [0.2, 0.5, 2], width_mm: 29 }],
  '/api/compute/load-curve': [{ load, points: 5 }],
  '/api/compute/rep': [{ load, capability }],
  '/api/compute/max-bar': [{ load, capability }],
  '/api/compute/fit-strength': [{ load, capability }],
  '/api/compute/plates': [{ target_kg: 102.5, bar_kg: 20, collars_kg: 5, discs: gear.discs }],
  '/api/compute/population': [
    { lift: 'squat', start: 'free', bodyMass_kg: 80, range: { from_m: 0.4, to_m: 1 } },
  ],
  '/api/compute/prescribe': [
    { ...byPercent, gear },
    { ...bySpeed, gear, fixed, bounds, safeStretchRatio: 2.5 },
  ],
  '/api/compute/allocate': [
    { racks, lifters: seats, bounds, oneSetPull: 0.5 },
    { racks, lifters: seats, oneSetPull: 1, safeStretchRatio: 2.5 },
  ],
  '/api/compute/estimate': [
    {
      lift: 'squat',
      bodyMass_kg: 90,
      range: { from_m: 0.4, to_m: 1 },
      on: '2026-06-01',
      sets: [{ date: '2026-05-28', load, start: 'free', reps: 2, made: 2, meanSpeed_mps: [0.4, 0.35] }],
    },
  ],
};
