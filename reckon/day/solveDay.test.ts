import { describe, expect, it } from 'vitest';
import { dayPlan, type PlanPlace } from '#contract/day/dayPlan.ts';
import { freshPlace } from '#contract/day/freshPlace.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { loadableMasses } from '#core/day/plates.ts';
import { loadCurve } from '#core/load/loadCurve.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';
import { solveDay } from './solveDay.ts';

const solvedOf = ({ solved }: PlanPlace) => solved!;
const theDay = (records: ClubRecords) => records.day[0]!;

/** How wide the first lifter's intervals are at bottom and lockout, 60 kg and a pair of bands on the bar. */
const widths = async (change: (records: ClubRecords) => void) => {
  const records = twoLifters();
  change(records);
  const day = structuredClone(theDay(records));
  const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
  day.groups[0]!.places[0]!.byCoach = { barKg: 60, bands, chains: null };
  const { blocks } = solvedOf(solveDay(records, day).groups[0]!.places[0]!);
  const { bottom, lockout } = blocks[1]!.explanation;
  return [bottom.high95N - bottom.low95N, lockout.high95N - lockout.low95N] as const;
};

const estimateFrom = (statureM: number | null) =>
  widths((records) => {
    records.liftHeights = [];
    records.lifter[0]!.statureM = statureM;
  });

const retiredFrom = (retiredOn: string) => {
  const records = twoLifters();
  records.bandPair.find(({ id }) => id === 'light')!.retiredOn = retiredOn;
  const day = structuredClone(theDay(records));
  const bands = [{ bandPairId: 'light', hookupId: 'doubled' }];
  day.groups[0]!.places[0]!.byCoach = { barKg: null, bands, chains: null };
  const [byHand, free] = solveDay(records, day).groups[0]!.places;
  return [byHand!.problem, solvedOf(free!).set.bands.map(({ bandPairId }) => bandPairId)];
};

describe('solveDay', () => {
  it('tells of a group that cannot be reckoned with why, place by place, and works the others out', () => {
    const records = twoLifters();
    const [group] = theDay(records).groups;
    // A sureness of 1 has no strength that goes with it: no probability of 1 has a quantile.
    records.club[0]!.strengthChance = 1;
    const percent = { by: 'percent' as const, targets: [{ basis: 'bar' as const, share: 0.5 }] };
    const groups = [group!, { ...group!, id: 'nobody', places: [], aim: percent }];
    const plan = solveDay(records, { ...theDay(records), groups });
    for (const { solved, problem } of plan.groups[0]!.places) {
      expect(solved).toBeNull();
      expect(problem).toMatch(/^Nothing can be worked out for this group \(probability .*\): check .*\.$/);
    }
    expect(plan.groups[0]!.places.map(({ turn }) => turn)).toEqual([1, 2]);
    expect(dayPlan.safeParse(plan).success).toBe(true);
  });

  it('tells of every step the chance of all reps, even where no log does: by the best, or by body mass', () => {
    const records = twoLifters();
    records.best = records.best.filter(({ lifterId }) => lifterId !== records.lifter[1]!.id);
    const [group] = solveDay(records, theDay(records)).groups;
    const said = group!.places.map((place) => solvedOf(place).blocks.map(({ expected }) => expected!));
    expect(said.map((steps) => [...new Set(steps.map(({ goesBy }) => goesBy))])).toEqual([
      ['best'],
      ['bodyMass'],
    ]);
    // Later steps count all reps before them: it gets no likelier.
    for (const [first, second] of said) {
      expect(second!.chanceAllReps).toBeLessThanOrEqual(first!.chanceAllReps);
      expect(second!.chanceAllReps).toBeLessThan(1);
    }
    // Less rest between the sets makes no rep likelier.
    const shorter = said.flat().filter(({ chanceShorterRest }) => chanceShorterRest !== null);
    expect(shorter.length).toBeGreaterThan(0);
    for (const { chanceAllReps, chanceShorterRest } of shorter)
      expect(chanceShorterRest).toBeLessThanOrEqual(chanceAllReps);
    expect(shorter.some((step) => step.chanceShorterRest! < step.chanceAllReps)).toBe(true);
  });

  it('says for each lifter what an independent load curve of that very setup gives', async () => {
    const records = twoLifters();
    const plan = dayPlan.parse(solveDay(records, theDay(records)));
    const [group] = plan.groups;
    expect(group!.places).toHaveLength(2);
    for (const place of group!.places) {
      const { set, blocks } = solvedOf(place);
      for (const { barKg, explanation } of blocks) {
        const setup = { rackId: place.rackId, start: place.start, barKg, bands: set.bands, chains: [] };
        const { load } = assembleLoad(records, {
          lifterId: place.lifterId,
          lift: 'squat',
          setup,
          on: plan.date,
        });
        const curve = loadCurve(load, 3);
        expect(explanation.bottom.totalN).toBeCloseTo(curve.bottomN, 6);
        expect(explanation.lockout.totalN).toBeCloseTo(curve.lockoutN, 6);
      }
    }
  });

  it('gives the short and the tall lifter different tensions from the same bands', async () => {
    const records = twoLifters();
    const day: RecordOf<'day'> = { ...theDay(records), oneSetPull: 1 };
    const [short, tall] = solveDay(records, day).groups[0]!.places.map(solvedOf);
    expect(short!.set.bands.length).toBeGreaterThan(0);
    expect(short!.set.bands).toEqual(tall!.set.bands);
    expect(tall!.blocks[0]!.explanation.lockout.bandN).toBeGreaterThan(
      short!.blocks[0]!.explanation.lockout.bandN * 1.1,
    );
  });

  it('loads only what the discs at the rack can load, work-up steps too', async () => {
    const records = twoLifters();
    const { places } = solveDay(records, theDay(records)).groups[0]!;
    const masses = loadableMasses({
      barKg: 20,
      collarsKg: 0,
      discs: records.disc.map((disc) => ({ massKg: disc.faceMassKg, pairs: disc.pairs })),
    });
    for (const { barKg } of places.flatMap((place) => solvedOf(place).blocks)) {
      expect(Math.min(...masses.map((kg) => Math.abs(kg - barKg)))).toBeLessThan(1e-9);
    }
  });

  it('keeps what the coach fixed and marks it', async () => {
    const records = twoLifters();
    const day = structuredClone(theDay(records));
    const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
    day.groups[0]!.places[0]!.byCoach = { barKg: 60, bands, chains: null };
    const solved = solvedOf(solveDay(records, day).groups[0]!.places[0]!);
    expect(solved.byCoach).toEqual({ bar: true, set: true });
    expect(solved.barKg).toBe(60);
    expect(solved.set.bands.map(({ bandPairId }) => bandPairId)).toEqual(['heavy']);
    // Even one that is stretched further than the club allows, which is told and proposed to nobody.
    records.club[0]!.safeStretchRatio = 1.1;
    const [byHand, free] = solveDay(records, day).groups[0]!.places.map(solvedOf);
    expect(byHand!.set.bands.map(({ bandPairId }) => bandPairId)).toEqual(['heavy']);
    expect(byHand!.blocks[0]!.explanation.cautions.map(({ code }) => code)).toContain('overstretched');
    expect(free!.set.bands).toEqual([]);
  });

  it('takes a bar set by hand for the mass that the weighed discs make of it, and warns only of a real miss', async () => {
    const records = twoLifters();
    // Every disc is 0.2 % light: 25 a side weighs 24.95, and 70 is 69.9.
    for (const disc of records.disc) disc.weighedMassKg = 0.998 * disc.faceMassKg;
    const day = structuredClone(theDay(records));
    const [first, second] = day.groups[0]!.places;
    first!.byCoach = { barKg: 70, bands: null, chains: null };
    second!.byCoach = { barKg: 71, bands: null, chains: null };
    const [near, far] = solveDay(records, day).groups[0]!.places.map(solvedOf);
    expect(near!.barKg).toBeCloseTo(69.9, 9);
    expect(near!.blocks[1]!.barKg).toBeCloseTo(69.9, 9);
    expect(near!.blocks[1]!.perSide).toEqual([
      { massKg: expect.closeTo(24.95, 9), count: 1, faceMassKg: 25 },
    ]);
    expect(near!.cautions.map(({ code }) => code)).not.toContain('notLoadable');
    expect(far!.cautions).toContainEqual({
      code: 'notLoadable',
      wantedKg: 71,
      nearestKg: expect.any(Number),
    });
  });

  it('counts each pair that is put on or taken off while all take their turns, at the club’s minutes for it', () => {
    const records = twoLifters();
    records.club[0]!.bandChangeMinutes = 2;
    const work = (...pairs: string[]) => {
      const day = structuredClone(theDay(records));
      day.groups[0]!.places.forEach((place, i) => {
        place.byCoach = {
          barKg: 60,
          bands: [{ bandPairId: pairs[i]!, hookupId: 'doubled' }],
          chains: null,
        };
      });
      const { places, racks, totals } = solveDay(records, day).groups[0]!;
      expect(places.map(({ turn }) => turn)).toEqual([1, 2]);
      expect(racks[0]!.handlingMinutes).toBe(totals.handlingMinutes);
      return [racks[0]!.changes, totals.handlingMinutes];
    };
    // One off and one on, and the same on the way back to the first.
    expect(work('light', 'heavy')).toEqual([4, 8]);
    expect(work('heavy', 'heavy')).toEqual([0, 0]);
  });

  it('hangs chains where the rack takes them, and by hand, two to a pair and as long as they hang', () => {
    const records = twoLifters();
    records.hookup = [];
    const chain = { id: 'chain', label: 'Chain', massPerMetreKg: 4, lengthM: 3, attachBelowBarM: 0.1 };
    records.chainPair = [{ ...chain, pairs: 2, note: '' }];
    const pairsOf = () =>
      solveDay(records, theDay(records)).groups[0]!.places.map((place) =>
        solvedOf(place).set.chains.reduce((sum, { pairs }) => sum + pairs, 0),
      );
    // Half of the bar more is asked at lockout than a pair of chains can give.
    expect(pairsOf()).toEqual([0, 0]);
    records.rack[0]!.takesChains = true;
    expect(Math.max(...pairsOf())).toBeGreaterThan(0);
    records.rack[0]!.takesChains = false;
    const day = structuredClone(theDay(records));
    const chains = [{ chainPairId: 'chain', pairs: 1 }];
    day.groups[0]!.places[1]!.byCoach = { barKg: 60, bands: null, chains };
    const { set, blocks, byCoach } = solvedOf(solveDay(records, day).groups[0]!.places[1]!);
    expect(set).toEqual({ bands: [], chains: [{ ...chains[0]!, label: 'Chain' }] });
    expect(byCoach).toEqual({ bar: true, set: true });
    // Locked out at 1.6 m, two chains of 4 kg a metre hang 1.5 m down to the floor.
    expect(blocks[1]!.explanation.lockout.chainN / 9.80665).toBeCloseTo(2 * 4 * 1.5, 9);
  });

  it('shares the discs out between racks that are used at once', () => {
    const records = twoLifters();
    records.rack.push({ ...records.rack[0]!, id: 'other', label: 'Other', barId: null });
    records.disc[0]!.pairs = 3;
    const day = structuredClone(theDay(records));
    day.groups[0]!.places[1]!.rackId = 'other';
    const { racks, places } = solveDay(records, day).groups[0]!;
    expect(racks.map(({ discs }) => discs.map(({ faceMassKg, pairs }) => [faceMassKg, pairs]))).toEqual(
      [2, 1].map((first) => [25, 20, 10, 5, 2.5, 1.25].map((kg, i) => [kg, i === 0 ? first : 1])),
    );
    expect(racks.map(({ bar }) => bar)).toEqual([
      'Bar, no collars counted',
      'bar not set, no collars counted',
    ]);
    // Each rack has its own first turn.
    expect(places.map(({ turn }) => turn)).toEqual([1, 1]);
  });

  it('says which gear set by hand is not at the rack for the lift', () => {
    const records = twoLifters();
    records.hookup.push({ ...records.hookup[0]!, id: 'bench', label: 'Bench', lifts: ['bench'] });
    records.hookup.push({ ...records.hookup[0]!, id: 'away', label: 'Away', rackId: 'other' });
    const day = structuredClone(theDay(records));
    for (const [i, hookupId] of ['bench', 'away'].entries())
      day.groups[0]!.places[i]!.byCoach = {
        barKg: null,
        bands: [{ bandPairId: 'heavy', hookupId }],
        chains: null,
      };
    expect(solveDay(records, day).groups[0]!.places.map(({ problem }) => problem)).toEqual(
      ['Bench', 'Away'].map(
        (label) =>
          `Hookup "${label}" is set by hand but not in use at this rack for the squat: choose another.`,
      ),
    );
  });

  it('says what is wrong with one lifter and still solves for another', async () => {
    const records = twoLifters();
    const day = structuredClone(theDay(records));
    day.groups[0]!.places[0]!.start = { way: 'pins', heightM: 2.5 };
    day.groups[0]!.places[1]!.start = { way: 'box', heightM: null };
    day.groups[0]!.places.push(freshPlace('tall', 'rack'));
    const [tooHigh, noHeight, right] = solveDay(records, day).groups[0]!.places;
    expect(tooHigh!.solved).toBeNull();
    expect(tooHigh!.problem).toMatch(/too high/);
    expect(noHeight!.problem).toBe('The start "box" needs its height.');
    expect(right!.problem).toBeNull();
    expect(right!.turn).toBe(3);
    // Where nobody can be solved for there is nothing to handle.
    for (const place of day.groups[0]!.places) place.start = { way: 'pins', heightM: 2.5 };
    const { totals, proof } = solveDay(records, day).groups[0]!;
    expect({ totals, proof }).toEqual({ totals: { misfit: 0, handlingMinutes: 0, total: 0 }, proof: null });
  });

  it('says to each lifter which band was read slack, and keeps solving where no band hangs', async () => {
    const records = twoLifters();
    records.bandReading[0]!.lengthM = 0.9;
    records.rack.push({ ...records.rack[0]!, id: 'bare', label: 'Bare' });
    const day = structuredClone(theDay(records));
    day.groups[0]!.places[1]!.rackId = 'bare';
    const [banded, bare] = solveDay(records, day).groups[0]!.places;
    expect(banded!.solved).toBeNull();
    expect(banded!.problem).toMatch(
      /^Band a of pair "light" was read at 0.9 m on 2026-01-01, .* 1.04 m at rest/,
    );
    expect(bare!.problem).toBeNull();
  });

  it('hangs a pair up to the day before it is retired, by hand too', () => {
    // The day is the first of March.
    expect(retiredFrom('2026-03-02')).toEqual([null, expect.arrayContaining(['light'])]);
    for (const on of ['2026-03-01', '2026-02-01'])
      expect(retiredFrom(on)).toEqual([
        `Band pair light is set by hand but retired since ${on}: choose another.`,
        expect.not.arrayContaining(['light']),
      ]);
  });

  it('never hangs a pair whose whole loop the choke takes, and says so where the coach does', async () => {
    const records = twoLifters();
    Object.assign(records.hookup[0]!, { way: 'choked', spentM: 1 });
    records.bandPair[1]!.restLengthAM = 0.9;
    const day = structuredClone(theDay(records));
    const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
    day.groups[0]!.places[0]!.byCoach = { barKg: null, bands, chains: null };
    const [byHand, free] = solveDay(records, day).groups[0]!.places;
    expect(byHand!.problem).toMatch(/^Hookup "Doubled" chokes 1 m/);
    expect(solvedOf(free!).set.bands.map(({ bandPairId }) => bandPairId)).not.toContain('heavy');
  });

  it('is less sure of a load at heights that were estimated, and less still at those that were assumed', async () => {
    const [measured, estimated, assumed] = [
      await widths(() => {}),
      await estimateFrom(1.75),
      await estimateFrom(null),
    ];
    for (const end of [0, 1] as const) {
      expect(estimated[end]).toBeGreaterThan(measured[end]);
      // The stature that is assumed is 1.75 m: the same heights, known less.
      expect(assumed[end]).toBeGreaterThan(estimated[end]);
    }
  });

  it('warns of minors, of heights that nobody measured and of a lifter without a best', async () => {
    const records = twoLifters();
    records.lifter[0]!.bornOn = '2011-06-01';
    records.liftHeights = [];
    records.best = records.best.filter(({ lifterId }) => lifterId !== 'tall');
    const [short, tall] = solveDay(records, theDay(records)).groups[0]!.places.map(solvedOf);
    const codes = (place: typeof short) => place!.cautions.map(({ code }) => code);
    expect(codes(short)).toEqual(expect.arrayContaining(['minor', 'heightsEstimated']));
    expect(codes(tall)).toContain('strengthAssumed');
    expect(tall!.reference.from).toBe('model');
  });
});

describe('a strength that hardly carries the body', () => {
  it('is one sentence instead of endless shares, and a beginner with a light best is still prescribed for', async () => {
    const records = twoLifters();
    const tall = records.best.find(({ lifterId }) => lifterId === 'tall')!;
    tall.setup.barKg = 20;
    for (const mass of records.bodyMass) mass.massKg = mass.lifterId === 'tall' ? 150 : 52;
    // A body mass of 52 kg and a best of 30 kg is a beginner's squat, common practice.
    records.best.find(({ lifterId }) => lifterId === 'short')!.setup.barKg = 30;
    const [short, weak] = solveDay(records, theDay(records)).groups[0]!.places;
    expect(short!.problem).toBeNull();
    expect(weak!.solved).toBeNull();
    expect(weak!.problem).toMatch(/^By the best that is known .*body of 150 kg.*bar of 20 kg/);
    // Every share that is shown is a number.
    for (const { explanation } of solvedOf(short!).blocks)
      for (const { share } of explanation.shares) expect(Number.isFinite(share)).toBe(true);
  });
});

describe('what proposals keep to', () => {
  it('says why the bar stays bare where the aim asks for bands: no hookup, or none that fits', () => {
    const aim = {
      by: 'percent' as const,
      targets: [
        { basis: 'bar' as const, share: 0.5 },
        { basis: 'lockout' as const, share: 0.75 },
      ],
    };
    const whys = (change: (records: ClubRecords) => void) => {
      const records = twoLifters();
      change(records);
      const day = structuredClone(theDay(records));
      Object.assign(day.groups[0]!, { aim });
      return solveDay(records, day).groups[0]!.places.map(({ solved }) => {
        const found = solved!.cautions.find(({ code }) => code === 'noBands');
        return found?.code === 'noBands' ? found.why.reason : solved!.set.bands.length;
      });
    };
    expect(whys((records) => Object.assign(records, { hookup: [] }))).toEqual(['noWay', 'noWay']);
    // Pegs rated for one newton carry no pair.
    expect(whys((records) => Object.assign(records.anchor[0]!, { ratedLoadN: 1 }))).toEqual([
      'noneFits',
      'noneFits',
    ]);
    expect(whys(() => {})).toEqual([expect.any(Number), expect.any(Number)]);
  });

  it('is the club its own, or the group its own, and a bound that holds a lifter back is named', async () => {
    const records = twoLifters();
    const day = structuredClone(theDay(records));
    day.groups[0]!.aim = { by: 'speed', fromMps: 1.2, toMps: 1.3 };
    const solved = (leastBarShare: number) => {
      const bounds = {
        leastBarShare,
        leastBandShare: 0,
        mostBandShare: 2,
        mostPairs: 0,
        strengthChance: 0.5,
      };
      day.groups[0]!.bounds = bounds;
      return solveDay(records, day).groups[0]!.places.map(solvedOf);
    };
    // Nobody moves half of the maximum at 1.2 m/s: the bar stays at the least.
    for (const { barKg, reference, cautions } of solved(0.5)) {
      expect(barKg).toBeGreaterThanOrEqual(0.5 * reference.kg);
      expect(barKg).toBeLessThan(0.5 * reference.kg + 2.6);
      expect(cautions).toContainEqual(expect.objectContaining({ code: 'boundBinds', bound: 'leastBar' }));
    }
    for (const { barKg, reference } of solved(0)) expect(barKg).toBeLessThan(0.5 * reference.kg);
  });
});
