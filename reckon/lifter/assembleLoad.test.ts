import { describe, expect, it } from 'vitest';
import type { Place } from '#contract/records/day.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { loadCurve } from '#core/load/loadCurve.ts';
import { assembleRackGear } from '#reckon/day/assembleRackGear.ts';
import { assembleHookup } from '#reckon/gear/assembleHookup.ts';
import { bandCurvesOf } from '#reckon/gear/bandCurvesOf.ts';
import { assembleLoad } from './assembleLoad.ts';

describe('bandCurvesOf', () => {
  it('takes side b to be like side a where only a was read, and says so', () => {
    const records = twoLifters();
    expect(bandCurvesOf(records, 'heavy', '2026-01-01').bothRead).toBe(false);
    const { a, b } = bandCurvesOf(records, 'heavy', '2026-01-01');
    expect(b).toBe(a);
  });

  it('lends the curve of the side that was read, also where the other has one lonely reading', () => {
    const records = twoLifters();
    const [first, ...more] = records.bandReading.filter(({ bandPairId }) => bandPairId === 'heavy');
    records.bandReading = [first!, ...more.map((reading) => ({ ...reading, side: 'b' as const }))];
    const { a, b, bothRead } = bandCurvesOf(records, 'heavy', '2026-01-01');
    expect([a.loading.known, bothRead]).toEqual(['measured', false]);
    expect(a).toBe(b);
  });
});

describe('assembleLoad', () => {
  it('lets the bar go from where it is at the bottom straight to lockout, so that bands pull a bar behind them forward', () => {
    const records = twoLifters();
    records.liftHeights[0]!.bottomForwardM = -0.05;
    const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
    const start = { way: 'free' as const, heightM: null };
    const setup = { rackId: 'rack', start, barKg: 50, chains: [], bands };
    const { load } = assembleLoad(records, { lifterId: 'short', lift: 'squat', setup, on: '2026-02-01' });
    // Pegs at 0.2 m under the bar at lockout: by similar triangles fore-aft over down is how far behind over how far up.
    for (const { zM, bandN, foreAftN } of loadCurve(load, 5).points) {
      const behindM = (0.05 * (1.2 - zM)) / (1.2 - 0.72);
      expect(foreAftN / bandN).toBeCloseTo(behindM / (zM - 0.2), 9);
    }
    const box = { ...setup, start: { way: 'box' as const, heightM: 0.4 } };
    const other = assembleLoad(records, { lifterId: 'short', lift: 'squat', setup: box, on: '2026-02-01' });
    expect([other.load.path, other.heights.bottomForwardM]).toEqual([[], null]);
  });

  it('lets two scale readings of a hung pair overrule the geometry', () => {
    const records = twoLifters();
    const setup = {
      rackId: 'rack',
      start: { way: 'free' as const, heightM: null },
      barKg: 50,
      chains: [],
      bands: [{ bandPairId: 'heavy', hookupId: 'doubled' }],
    };
    const reading = { hookupId: 'doubled', bandPairId: 'heavy', takenOn: '2026-01-01' };
    records.scaleReading = [
      { ...reading, id: '1', barHeightM: 0.5, pairForceN: 100 },
      { ...reading, id: '2', barHeightM: 1.5, pairForceN: 300 },
    ];
    const { load, bands } = assembleLoad(records, {
      lifterId: 'short',
      lift: 'squat',
      setup,
      on: '2026-02-01',
    });
    expect(bands[0]!.onScale).toBe(true);
    // A straight line through both readings, at the lifter's lockout of 1.2 m.
    expect(loadCurve(load, 2).lockoutN).toBeCloseTo(50 * load.gravityMps2 + 240, 9);
    expect(bands[0]!.known).toBe('measured');
    // Of several looks at one height, which a tape tells to half a centimetre, the newest counts; one height alone is no line.
    const looks = (...given: [barHeightM: number, pairForceN: number, takenOn: string][]) => {
      records.scaleReading = given.map(([barHeightM, pairForceN, takenOn], i) => ({
        ...reading,
        id: `${i}`,
        barHeightM,
        pairForceN,
        takenOn,
      }));
      return assembleHookup(records, 'heavy', 'doubled', '2026-02-01').measured?.verticalAt ?? null;
    };
    expect(
      looks(
        [1.5, 300, '2026-01-01'],
        [0.5, 90, '2026-01-01'],
        [0.504, 100, '2026-01-20'],
        [1, 200, '2026-01-01'],
      ),
    ).toEqual([
      { zM: 0.504, forceN: 100 },
      { zM: 1, forceN: 200 },
      { zM: 1.5, forceN: 300 },
    ]);
    expect(looks([0.5, 90, '2026-01-01'], [0.504, 100, '2026-01-20'])).toBeNull();
    expect(looks([0.5, 90, '2026-01-01'], [0.506, 100, '2026-01-20'])).toHaveLength(2);
  });

  it('says how the pull of each pair is known: not measured where nobody read it, on a scale or under the bar', () => {
    const records = twoLifters();
    records.bandReading = records.bandReading.filter(({ bandPairId }) => bandPairId === 'light');
    const bands = ['light', 'heavy'].map((bandPairId) => ({ bandPairId, hookupId: 'doubled' }));
    const start = { way: 'free' as const, heightM: null };
    const setup = { rackId: 'rack', start, barKg: 50, chains: [], bands };
    const known = () =>
      assembleLoad(records, { lifterId: 'short', lift: 'squat', setup, on: '2026-02-01' }).bands.map(
        (band) => band.known,
      );
    expect(known()).toEqual(['measured', 'notMeasured']);
    const reading = { hookupId: 'doubled', bandPairId: 'heavy', takenOn: '2026-01-01' };
    records.scaleReading = [0.5, 1.5].map((barHeightM) => ({
      ...reading,
      id: `${barHeightM}`,
      barHeightM,
      pairForceN: 100,
    }));
    expect(known()).toEqual(['measured', 'measured']);
  });
});

describe('the weight of bar and chains', () => {
  it('is that of the place of the club, two chains to a pair, as far as they are off the floor', () => {
    const records = twoLifters();
    const more = { label: 'Chain', massPerMetreKg: 5, lengthM: 3, attachBelowBarM: 0.2, pairs: 4, note: '' };
    records.chainPair = [{ ...more, id: 'chain' }];
    const start = { way: 'free' as const, heightM: null };
    const chains = [{ chainPairId: 'chain', pairs: 2 }];
    const setup = { rackId: 'rack', start, barKg: 50, chains, bands: [] };
    const lockoutN = () =>
      loadCurve(assembleLoad(records, { lifterId: 'short', lift: 'squat', setup, on: '2026-02-01' }).load, 2)
        .lockoutN;
    // Lockout at 1.2 m: one metre of four chains beside 50 kg. Standard gravity, then the pole's (NIMA TR8350.2, table 3.4).
    expect(lockoutN()).toBeCloseTo((50 + 4 * 5) * 9.80665, 6);
    Object.assign(records.club[0]!, { latitudeDeg: 90, heightAboveSeaM: 0 });
    expect(lockoutN()).toBeCloseTo(70 * 9.8321849378, 6);
    Object.assign(records.club[0]!, { heightAboveSeaM: null });
    expect(lockoutN()).toBeCloseTo(70 * 9.80665, 6);
  });
});

describe('the gear of a rack', () => {
  it('holds a pair that fits nobody only where the coach hung it, in that hookup', () => {
    const records = twoLifters();
    // Not even at rest is any loop short enough for this.
    records.club[0]!.safeStretchRatio = 1.01;
    records.hookup.push({ ...records.hookup[0]!, id: 'single', way: 'single' });
    const { places } = records.day[0]!.groups[0]!;
    const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
    const travels = [{ bottomM: 0.72, lockoutM: 1.2, gravityMps2: 9.80665, path: [] }];
    const hookups = (byCoach: Place['byCoach']) => {
      const racks = [{ rackId: 'rack', places: places.map((place) => ({ ...place, byCoach })), travels }];
      const [assembled] = assembleRackGear(records, 'squat', '2026-02-01', racks);
      return assembled!.gear.hookups.map(({ pairId, hookupId }) => [pairId, hookupId]);
    };
    expect(hookups(null)).toEqual([]);
    expect(hookups({ barKg: null, bands, chains: null })).toEqual([['heavy', 'doubled']]);
  });
});
