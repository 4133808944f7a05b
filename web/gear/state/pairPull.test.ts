import { describe, expect, it } from 'vitest';
import { allKinds, type ClubRecords, type KindName, type RecordOf } from '#contract/records/allKinds.ts';
import { emptyClub } from '#contract/tests/emptyClub.ts';
import { hookupPlaces, pairPull } from './pairPull.ts';
import { pairState } from './pairState.ts';

const today = '2026-11-25';
const REST_M = 1;
const MU_N = 80;

/** A neo-Hookean loop; Rivlin 1948, Phil Trans R Soc A 240:459. */
function loopN(lengthM: number): number {
  const lambda = lengthM / REST_M;
  return MU_N * (lambda - lambda ** -2);
}

/** A record with its defaults filled in, as the store would give it. */
function record<K extends KindName>(kind: K, given: Record<string, unknown>): RecordOf<K> {
  return allKinds[kind].shape.parse(given) as RecordOf<K>;
}

function readings(side: 'a' | 'b', lengthsM: readonly number[]): ClubRecords['bandReading'] {
  return lengthsM.map((lengthM) =>
    record('bandReading', {
      id: `${side}${lengthM}`,
      bandPairId: 'pair',
      side,
      takenOn: '2026-11-01',
      lengthM,
      forceN: loopN(lengthM),
    }),
  );
}

const lengthsM = [1.2, 1.5, 1.8, 2.1, 2.4];

function club(change: Partial<ClubRecords>): ClubRecords {
  return {
    ...emptyClub(),
    club: [record('club', { id: 'club', name: 'Test' })],
    bandPair: [record('bandPair', { id: 'pair', label: 'P', widthMm: 29, restLengthAM: REST_M })],
    bandReading: [...readings('a', lengthsM), ...readings('b', lengthsM)],
    rack: [record('rack', { id: 'rack', label: 'R', lifts: ['squat'] })],
    anchor: [record('anchor', { id: 'anchor', rackId: 'rack', label: 'A', xM: 0.3, zM: 0.2 })],
    hookup: [
      record('hookup', {
        id: 'hookup',
        rackId: 'rack',
        anchorId: 'anchor',
        label: 'H',
        way: 'doubled',
        lifts: ['squat'],
      }),
    ],
    ...change,
  };
}

function pullIn(records: ClubRecords, zM: number) {
  const state = pairState(records, records.club[0]!, records.bandPair[0]!, today);
  return pairPull({ records, today }, state, hookupPlaces(records)[0]!, zM);
}

describe('what a pair gives', () => {
  it('follows the rubber law through the doubled geometry: lambda = 2 l / L0, each loop pulls twice', () => {
    const zM = 1.2;
    const pathM = Math.hypot(0.3, zM - 0.2);
    const downN = 2 * 2 * loopN(2 * pathM) * ((zM - 0.2) / pathM);
    const pull = pullIn(club({}), zM);
    expect(pull).toMatchObject({ from: 'readings', downN: expect.closeTo(downN, 3) });
    // Forward of the bar, so the pull is forward, by the same triangle.
    expect(pull).toMatchObject({ foreAftN: expect.closeTo((downN * 0.3) / (zM - 0.2), 3) });
  });

  it('says so where one band was not read, where it is stretched too far, where only the width is known', () => {
    const one = club({ bandReading: readings('a', lengthsM) });
    expect(pullIn(one, 1.2)).toMatchObject({ from: 'oneBand' });
    expect(pullIn(club({}), 1.9)).toMatchObject({ from: 'beyondReadings' });
    expect(pullIn(club({ bandReading: [] }), 1.2)).toMatchObject({ from: 'width' });
  });

  it('is what the scale said, where it was read at two heights, with the prediction kept beside it', () => {
    const scaleReading = [
      [1, 300],
      [1.4, 500],
    ].map(([barHeightM, pairForceN]) =>
      record('scaleReading', {
        id: `s${barHeightM}`,
        hookupId: 'hookup',
        bandPairId: 'pair',
        takenOn: '2026-11-01',
        barHeightM,
        pairForceN,
      }),
    );
    const geometry = pullIn(club({}), 1.2);
    const pull = pullIn(club({ scaleReading }), 1.2);
    // Halfway between two readings on a straight line.
    expect(pull).toMatchObject({ from: 'scale', downN: expect.closeTo(400, 9) });
    expect(pull).toHaveProperty('geometryN', (geometry as { geometryN: number }).geometryN);
  });

  it('is not told while a reading cannot be, instead of failing', () => {
    const [first, ...rest] = readings('a', lengthsM);
    const records = club({ bandReading: [{ ...first!, lengthM: 0.9 }, ...rest] });
    expect(pullIn(records, 1.2)).toEqual({ not: 'a reading is impossible' });
    expect(pairState(records, records.club[0]!, records.bandPair[0]!, today).sides[0].fault).toMatch(
      /0\.9 m/,
    );
  });
});
