import type { BandOnBar, Lift, Setup, Start } from '#contract/records/lift.ts';
import type { Athlete } from './Athlete.ts';
import { competitionStart, type TaskSetup } from './trueTask.ts';

/** The setups that an invented lifter rotates through, only of gear that the club had by then. */
export interface Variants {
  squat: TaskSetup[];
  bench: TaskSetup[];
  deadlift: TaskSetup[];
}

/** Boxes measured with each lifter stand in millraceHeights.ts; who has none sits on this one. */
const USUAL_BOX_M = 0.36;
const BOARD_M = 0.05;
const MAT_M = 0.05;
const PIN_STEP_M = 0.05;
/** Straight total masses (kg) up to which a pair is the usual one, by lift: 13 mm, 22 mm, then 29 mm. */
const PAIR_UP_TO: Record<Lift, readonly [number, number]> = {
  squat: [215, 330],
  bench: [95, 175],
  deadlift: [210, 340],
};
/** Days since which the invented pairs hang in the club; see inventedPairs.ts. */
const BOUGHT = { '13-a': -640, '22-a': -610, '29-a': -722, '29-b': -430 } as const;
/** 29-A went soft and 29-B took its place. */
const OLD_UNTIL = BOUGHT['29-b'];

export function variants(athlete: Athlete, day: number): Variants {
  const { boxesM, bottomM } = athlete;
  const box: Start = { way: 'box', heightM: boxesM[0] ?? USUAL_BOX_M };
  const otherBox: Start = { way: 'box', heightM: boxesM.at(-1) ?? USUAL_BOX_M };
  const pins = (lift: Lift, aboveM: number): Start => ({
    way: 'pins',
    heightM: Number((Math.round((bottomM[lift] + aboveM) / PIN_STEP_M) * PIN_STEP_M).toFixed(2)),
  });
  const banded = (lift: Lift, start: Start, hookup: string): TaskSetup[] => {
    const pair = pairFor(athlete, lift, day);
    return pair ? [raw(lift, start, [{ bandPairId: `band-${pair}`, hookupId: `hookup-${hookup}` }])] : [];
  };
  const isStrong = athlete.courses.squat(day) > Math.log(150);
  const own = athlete.bests
    .filter(({ platform, setup }) => !platform && setup.bands.length + setup.chains.length > 0)
    .filter(({ setup }) => setup.bands.every(({ bandPairId }) => isBought(bandPairId, day)))
    .map(({ lift, equipment, setup: { rackId, start, bands, chains } }) => ({
      lift,
      equipment,
      setup: { rackId, start, bands, chains },
    }));
  return {
    squat: [
      raw('squat', box),
      ...banded('squat', box, 'north-doubled-low'),
      raw('squat', otherBox),
      ...own.filter(({ lift }) => lift === 'squat'),
      ...(isStrong ? [raw('squat', box, [], [{ chainPairId: 'chain-long', pairs: 1 }])] : []),
      raw('squat', pins('squat', 0.12)),
    ],
    bench: [
      raw('bench', competitionStart('bench')),
      ...banded('bench', competitionStart('bench'), 'south-doubled-low'),
      raw('bench', { way: 'boards', heightM: BOARD_M }),
      ...banded('bench', competitionStart('bench'), 'north-from-above'),
      ...own.filter(({ lift }) => lift === 'bench'),
      raw('bench', pins('bench', 0.07)),
    ],
    deadlift: [
      raw('deadlift', competitionStart('deadlift')),
      ...banded('deadlift', competitionStart('deadlift'), 'south-doubled-floor'),
      raw('deadlift', { way: 'deficit', heightM: MAT_M }),
      raw('deadlift', { way: 'blocks', heightM: MAT_M }),
    ],
  };
}

function raw(lift: Lift, start: Start, bands: BandOnBar[] = [], chains: Setup['chains'] = []): TaskSetup {
  return { lift, equipment: 'raw', setup: { rackId: rackOf(lift, bands), start, bands, chains } };
}

/** The straight lift of the platform, in the lifter's own equipment or raw. */
export function platformTask({ lifter }: Athlete, lift: Lift, isRaw = false): TaskSetup {
  return {
    lift,
    equipment: isRaw ? 'raw' : lifter.equipment,
    setup: { rackId: rackOf(lift, []), start: competitionStart(lift), bands: [], chains: [] },
  };
}

function rackOf(lift: Lift, bands: readonly BandOnBar[]): string {
  const hookupId = bands[0]?.hookupId;
  const south = hookupId ? hookupId.includes('south') : lift === 'deadlift';
  return south ? 'rack-south' : 'rack-north';
}

function pairFor({ courses }: Athlete, lift: Lift, day: number): string | null {
  const kg = Math.exp(courses[lift](day));
  const [light, middle] = PAIR_UP_TO[lift];
  const heavy = day < OLD_UNTIL ? '29-a' : '29-b';
  const pair = kg < light ? '13-a' : kg < middle ? '22-a' : heavy;
  return isBought(`band-${pair}`, day) ? pair : null;
}

/** Newer pairs than these come up only in bests of the last weeks, so that no date need be kept for them. */
function isBought(bandPairId: string, day: number): boolean {
  const bought = Object.entries(BOUGHT).find(([pair]) => bandPairId === `band-${pair}`)?.[1] ?? -380;
  return day > bought;
}
