import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { BandOnBar, Setup, Start } from '#contract/records/lift.ts';
import { dayFrom } from './dayFrom.ts';

type Best = RecordOf<'best'>;

/** Lifter, days ago, lift, equipment, kg: straight weight in the club's own racks. */
const STRAIGHT: readonly (readonly [string, number, Best['lift'], Best['equipment'], number])[] = [
  ['hana', 38, 'bench', 'raw', 42.5],
  ['nomvula', 45, 'deadlift', 'raw', 127.5],
  ['ruben', 118, 'squat', 'raw', 92.5],
  ['ruben', 33, 'squat', 'raw', 112.5],
  ['ruben', 110, 'bench', 'raw', 72.5],
  ['ruben', 26, 'bench', 'raw', 80],
  ['ruben', 104, 'deadlift', 'raw', 120],
  ['ruben', 40, 'deadlift', 'raw', 140],
  ['saoirse', 84, 'squat', 'raw', 137.5],
  ['saoirse', 77, 'bench', 'raw', 87.5],
  ['kwabena', 52, 'squat', 'raw', 237.5],
  ['kwabena', 47, 'bench', 'raw', 162.5],
  ['dragan', 66, 'squat', 'raw', 195],
  ['dragan', 59, 'bench', 'raw', 137.5],
  ['tevita', 80, 'squat', 'raw', 290],
  ['tevita', 73, 'bench', 'raw', 205],
  ['bastien', 31, 'bench', 'raw', 170],
];

/** Squats off a box: lifter, days ago, equipment, box (m), kg on the bar, what hangs on it. */
const FROM_BOX: readonly (readonly [
  string,
  number,
  Best['equipment'],
  number,
  number,
  readonly Hanging[],
])[] = [
  ['ilse', 150, 'raw', 0.36, 117.5, []],
  ['ilse', 66, 'raw', 0.33, 102.5, ['13-A north doubled']],
  ['tereza', 88, 'raw', 0.36, 87.5, []],
  ['tereza', 59, 'raw', 0.36, 80, ['13-A north doubled']],
  ['saoirse', 94, 'raw', 0.36, 95, []],
  ['saoirse', 45, 'raw', 0.4, 95, ['13-A south doubled']],
  ['maribel', 80, 'raw', 0.385, 117.5, []],
  ['odhran', 73, 'raw', 0.36, 130, []],
  ['odhran', 38, 'raw', 0.385, 117.5, ['22-B south doubled']],
  ['emre', 59, 'wraps', 0.4, 155, ['22-A north doubled']],
  // On the way to Harrowmere, with what he goes by now: an approach that a meet has followed.
  ['kwabena', 228, 'raw', 0.36, 130, ['29-B south doubled']],
  ['kwabena', 101, 'raw', 0.4, 190, []],
  ['kwabena', 31, 'raw', 0.36, 135, ['29-B south doubled']],
  ['lars', 94, 'raw', 0.425, 200, []],
  ['lars', 45, 'raw', 0.385, 142.5, ['29-B north doubled']],
  ['lars', 24, 'raw', 0.425, 192.5, ['chains']],
  ['dragan', 52, 'single-ply', 0.41, 165, ['29-B north doubled']],
  ['bastien', 73, 'raw', 0.435, 212.5, []],
  ['bastien', 38, 'raw', 0.41, 140, ['29-B north doubled', '13-A north doubled']],
  ['tevita', 66, 'multi-ply', 0.41, 227.5, ['64-A north doubled']],
  ['tevita', 24, 'multi-ply', 0.385, 245, ['29-B north doubled']],
];

/** Bench presses with bands, paused on the chest: lifter, days ago, equipment, kg on the bar, what hangs on it. */
const PRESSED: readonly (readonly [string, number, Best['equipment'], number, readonly Hanging[]])[] = [
  ['emre', 54, 'wraps', 127.5, ['22-B north doubled']],
  ['kwabena', 61, 'raw', 140, ['22-A north doubled']],
  ['dragan', 40, 'raw', 157.5, ['29-B north from-above']],
  ['tevita', 47, 'raw', 170, ['29-B north doubled']],
];

type Hanging = 'chains' | `${string} ${'north' | 'south'} ${'doubled' | 'from-above'}`;

/** What the invented lifters made in their own club: straight, off a box, with bands and with chains. */
export function millraceGymBests(today: string): ClubRecords['best'] {
  const straight = STRAIGHT.map(([lifter, daysAgo, lift, equipment, barKg]) =>
    gymBest(today, { lifter, daysAgo, lift, equipment }, straightSetup(lift, barKg)),
  );
  const fromBox = FROM_BOX.map(([lifter, daysAgo, equipment, heightM, barKg, hanging]) =>
    gymBest(
      today,
      { lifter, daysAgo, lift: 'squat', equipment },
      hungSetup({ way: 'box', heightM }, barKg, hanging),
    ),
  );
  const pressed = PRESSED.map(([lifter, daysAgo, equipment, barKg, hanging]) =>
    gymBest(
      today,
      { lifter, daysAgo, lift: 'bench', equipment },
      hungSetup({ way: 'paused', heightM: null }, barKg, hanging),
    ),
  );
  return [...straight, ...fromBox, ...pressed];
}

function gymBest(
  today: string,
  done: { lifter: string; daysAgo: number; lift: Best['lift']; equipment: Best['equipment'] },
  setup: Setup,
): Best {
  return {
    id: `best-${done.lifter}-gym-${done.lift}-${done.daysAgo}`,
    lifterId: `lifter-${done.lifter}`,
    lift: done.lift,
    doneOn: dayFrom(today, -done.daysAgo),
    place: 'Millrace',
    platform: false,
    equipment: done.equipment,
    setup,
    note: '',
  };
}

function straightSetup(lift: Best['lift'], barKg: number): Setup {
  const start: Start = { way: 'free', heightM: null };
  const rackId = lift === 'deadlift' ? 'rack-south' : 'rack-north';
  return { rackId, start, barKg, bands: [], chains: [] };
}

function hungSetup(start: Start, barKg: number, hanging: readonly Hanging[]): Setup {
  const onSouth = hanging.some((text) => text.includes('south'));
  return {
    rackId: onSouth ? 'rack-south' : 'rack-north',
    start,
    barKg,
    bands: hanging.filter((text) => text !== 'chains').map(bandOnBar),
    chains: hanging.includes('chains') ? [{ chainPairId: 'chain-long', pairs: 1 }] : [],
  };
}

/** '22-A north doubled' names a pair, a rack and the hookup there. */
function bandOnBar(text: string): BandOnBar {
  const [pair = '', rack, way] = text.split(' ');
  const hookup = way === 'doubled' ? 'doubled-low' : way;
  return { bandPairId: `band-${pair.toLowerCase()}`, hookupId: `hookup-${rack}-${hookup}` };
}
