import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { dayFrom } from './dayFrom.ts';
import { inventedPairN } from './millraceBands.ts';
import { readScale } from './readScale.ts';

type Racks = Pick<ClubRecords, 'rack' | 'anchor' | 'hookup' | 'scaleReading'>;
type Hookup = RecordOf<'hookup'>;

/** Anchor points: rack, name, x, y, z (m), rated load (N). */
const ANCHORS: readonly (readonly [string, string, number, number, number, number | null])[] = [
  ['north', 'Low front pegs', 0.06, 0.05, 0.21, 4500],
  ['north', 'Low rear pegs', -0.34, 0.05, 0.21, 4500],
  ['north', 'Top pegs', 0.02, 0.08, 2.52, 3000],
  ['south', 'Low front pegs', 0.05, 0.04, 0.18, 4000],
  ['south', 'Low rear pegs', -0.36, 0.04, 0.18, null],
  ['south', 'Top pegs', 0.02, 0.08, 2.46, 2500],
  ['south', 'Floor eyes', 0.02, 0.1, 0.03, 5000],
];

const HOOKUPS: readonly (readonly [string, string, string, Hookup['way'], Hookup['lifts']])[] = [
  ['north', 'Low front pegs', 'Doubled, low', 'doubled', ['squat', 'bench']],
  ['north', 'Low front pegs', 'Single, low', 'single', ['squat']],
  ['north', 'Top pegs', 'From above', 'single', ['bench']],
  ['south', 'Low front pegs', 'Doubled, low', 'doubled', ['squat', 'bench']],
  ['south', 'Low rear pegs', 'Choked, rear', 'choked', ['squat']],
  ['south', 'Top pegs', 'From above', 'single', ['bench']],
  ['south', 'Floor eyes', 'Doubled, floor', 'doubled', ['deadlift']],
];

/** Loop length that goes once round a peg of 50 mm and through itself. Measured with a tape, invented. */
const CHOKE_SPENT_M = 0.16;

/** Pairs that were hung doubled on the north rack with a scale under the bar, at three bar heights. */
const HUNG_PAIRS = ['22-A', '29-B'];
const HUNG_AT_M = [0.95, 1.2, 1.45];
/** A peg is not a point: the loop's turn round peg and sleeve takes this share off what geometry gives. */
const TURN_SHARE = 0.975;

/** The two racks with anchor points and hookups. The club and its numbers are invented. */
export function millraceRacks(today: string): Racks {
  return {
    rack: [
      {
        id: 'rack-north',
        label: 'North rack',
        lifts: ['squat', 'bench', 'deadlift'],
        barId: 'bar-squat',
        collarPairId: 'collars-screw',
        takesChains: true,
        benchHeightM: 0.43,
        note: 'Bolted down. Safeties every 5 cm.',
      },
      {
        id: 'rack-south',
        label: 'South rack',
        lifts: ['squat', 'bench', 'deadlift'],
        barId: 'bar-long-1',
        collarPairId: 'collars-screw',
        takesChains: false,
        benchHeightM: 0.42,
        note: 'Rear pegs: the plate with the rating is gone. Ask before heavy pairs go there.',
      },
    ],
    anchor: ANCHORS.map(([rack, label, xM, yM, zM, ratedLoadN]) => ({
      id: anchorId(rack, label),
      rackId: `rack-${rack}`,
      label,
      xM,
      yM,
      zM,
      ratedLoadN,
    })),
    hookup: HOOKUPS.map(([rack, anchor, label, way, lifts]) => ({
      id: slug('hookup', rack, label),
      rackId: `rack-${rack}`,
      anchorId: anchorId(rack, anchor),
      label,
      way,
      spentM: way === 'choked' ? CHOKE_SPENT_M : null,
      lifts,
    })),
    scaleReading: HUNG_PAIRS.flatMap((pair, pairIndex) =>
      HUNG_AT_M.map((barHeightM, index) => ({
        id: `scale-${pair.toLowerCase()}-${index + 1}`,
        hookupId: slug('hookup', 'north', 'Doubled, low'),
        bandPairId: `band-${pair.toLowerCase()}`,
        takenOn: dayFrom(today, -40),
        barHeightM,
        pairForceN: readScale(doubledDownN(pair, barHeightM), 900 + 10 * pairIndex + index),
      })),
    ),
  };
}

function slug(kind: string, rack: string, label: string): string {
  return [kind, rack, ...label.toLowerCase().split(/[ ,]+/)].join('-');
}

function anchorId(rack: string, label: string): string {
  return slug('anchor', rack, label);
}

/** Vertical pull of a pair doubled on the north rack's front pegs: both folds run along the path, 2 F(2 l). */
function doubledDownN(pair: string, barHeightM: number): number {
  const peg = ANCHORS[0]!;
  const riseM = barHeightM - peg[4];
  const pathM = Math.hypot(peg[2], peg[3], riseM);
  return (TURN_SHARE * 2 * inventedPairN(pair, 2 * pathM) * riseM) / pathM;
}
