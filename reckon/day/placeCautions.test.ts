import { describe, expect, it } from 'vitest';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { longLog } from '#contract/tests/longLog.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { solveDay } from './solveDay.ts';

type Code = PlanCaution['code'];

/** What is said of the tall lifter on the first of March 2026 with the heavy pair hung by hand, one sort of caution alone. */
function said(
  code: Code,
  change: (records: ClubRecords) => void,
  estimates: StrengthEstimate[] = [],
): PlanCaution[] {
  const records = twoLifters();
  change(records);
  const day = structuredClone(records.day[0]!);
  const bands = [{ bandPairId: 'heavy', hookupId: 'doubled' }];
  day.groups[0]!.places[1]!.byCoach = { barKg: 60, bands, chains: null };
  const { cautions } = solveDay(records, day, estimates).groups[0]!.places[1]!.solved!;
  return cautions.filter((caution) => caution.code === code);
}
const tall = (records: ClubRecords) => records.lifter.find(({ id }) => id === 'tall')!;
const bestOf = (records: ClubRecords) => records.best.find(({ lifterId }) => lifterId === 'tall')!;

const doneOn = (date: string) =>
  said('strengthOld', (records) => Object.assign(bestOf(records), { doneOn: date }));

const lastSetOn = (date: string) =>
  said('strengthOld', () => {}, [{ ...longLog(twoLifters(), 'tall', 200), lastSetOn: date }]);

const worn = (lifters: 'raw' | 'wraps', best: 'raw' | 'wraps') =>
  said('otherEquipment', (records) => {
    tall(records).equipment = lifters;
    bestOf(records).equipment = best;
  });

const standing = (latitudeDeg: number | null, heightAboveSeaM: number | null) =>
  said('gravityAssumed', (records) => Object.assign(records.club[0]!, { latitudeDeg, heightAboveSeaM }));

const weighed = (bar: boolean, discs: boolean) =>
  said('notWeighed', (records) => {
    records.bar[0]!.weighed = bar;
    for (const disc of records.disc) disc.weighedMassKg = discs ? disc.faceMassKg : null;
  });

const ofHeights = (change: (records: ClubRecords) => void) =>
  (['heightsEstimated', 'heightsAssumed'] as const).flatMap((code) => said(code, change));

const withoutBests = (records: ClubRecords) => {
  records.best = [];
};

describe('what to know about the lifter behind the numbers', () => {
  it.each([
    ['2008-03-02', 17],
    ['2010-03-01', 16],
    ['2010-03-02', 15],
    // No 29 February came in 2026 before the first of March.
    ['2010-02-28', 16],
  ])('is the age of a minor by the calendar: born %s, %d on 1 March 2026', (bornOn, age) => {
    expect(said('minor', (records) => Object.assign(tall(records), { bornOn }))).toEqual([
      { code: 'minor', age },
    ]);
  });

  it.each(['2008-03-01', '2008-02-29', '1990-12-31'])(
    'is nothing about age from the eighteenth birthday on: born %s',
    (bornOn) => {
      expect(said('minor', (records) => Object.assign(tall(records), { bornOn }))).toEqual([]);
    },
  );

  it('is that the best is older than a year, and from the same date of last year on no more', () => {
    expect(doneOn('2025-02-27')).toEqual([{ code: 'strengthOld', doneOn: '2025-02-27' }]);
    expect(doneOn('2025-03-01')).toEqual([]);
  });

  it('is the same of the newest set of a log, and then no word of a best', () => {
    expect(lastSetOn('2025-02-27')).toEqual([{ code: 'strengthOld', doneOn: '2025-02-27', by: 'log' }]);
    expect(lastSetOn('2025-03-01')).toEqual([]);
  });

  it('is that the best was made in other equipment than the lifter wears', () => {
    expect(worn('raw', 'wraps')).toEqual([{ code: 'otherEquipment', equipment: 'wraps' }]);
    expect(worn('wraps', 'raw')).toEqual([{ code: 'otherEquipment', equipment: 'raw' }]);
    expect([...worn('raw', 'raw'), ...worn('wraps', 'wraps')]).toEqual([]);
  });

  it('is that nobody measured the heights: estimated from stature, assumed where not even that is known', () => {
    const unmeasured = (statureM: number | null) =>
      ofHeights((records) => {
        records.liftHeights = [];
        tall(records).statureM = statureM;
      });
    expect(unmeasured(1.95)).toEqual([{ code: 'heightsEstimated' }]);
    expect(unmeasured(null)).toEqual([{ code: 'heightsAssumed' }]);
    expect(ofHeights(() => {})).toEqual([]);
  });

  it('is that strength is known by body mass alone, and no word of it where a best or a log tells it', () => {
    expect(said('strengthAssumed', withoutBests)).toEqual([{ code: 'strengthAssumed' }]);
    expect(said('strengthAssumed', () => {})).toEqual([]);
    expect(said('strengthAssumed', withoutBests, [longLog(twoLifters(), 'tall', 200)])).toEqual([]);
  });

  it('is a body mass that nobody wrote down, and no word of one on the scale', () => {
    const unknown = said('bodyMassAssumed', (records) => Object.assign(records, { bodyMass: [] }));
    // 75 kg by assumption (docs/model.md, "lifter").
    expect(unknown).toEqual([{ code: 'bodyMassAssumed', massKg: 75 }]);
    expect(said('bodyMassAssumed', () => {})).toEqual([]);
  });

  it('is the usual bar of 20 kg where none is set for the rack, and no word of one that is', () => {
    const unset = said('barAssumed', (records) => Object.assign(records.rack[0]!, { barId: null }));
    expect(unset).toEqual([{ code: 'barAssumed', massKg: 20 }]);
    expect(said('barAssumed', () => {})).toEqual([]);
  });

  it('is standard gravity where the club does not say both how far north and how high it stands', () => {
    const assumed = [{ code: 'gravityAssumed' }];
    expect([standing(null, null), standing(53, null), standing(53, 40)]).toEqual([assumed, assumed, []]);
  });

  it('is no word of gravity where no band hangs, since a mass is the same everywhere', () => {
    const records = twoLifters();
    const day = structuredClone(records.day[0]!);
    day.groups[0]!.places[1]!.byCoach = { barKg: 60, bands: [], chains: null };
    const { cautions } = solveDay(records, day).groups[0]!.places[1]!.solved!;
    expect(cautions.map(({ code }) => code)).not.toContain('gravityAssumed');
  });

  it('is that bar or discs count as marked until a scale has seen them, be it at just that mass', () => {
    expect(weighed(false, false)).toEqual([{ code: 'notWeighed', bar: true, discs: true }]);
    expect(weighed(true, false)).toEqual([{ code: 'notWeighed', bar: false, discs: true }]);
    expect(weighed(false, true)).toEqual([{ code: 'notWeighed', bar: true, discs: false }]);
    expect(weighed(true, true)).toEqual([]);
  });

  it('is nothing about discs that stay on the rack: 60 kg of a bar of 20 need no smallest one', () => {
    const onlySmallest = said('notWeighed', (records) => {
      for (const disc of records.disc) disc.weighedMassKg = disc.faceMassKg === 1.25 ? null : disc.faceMassKg;
      records.day[0]!.groups[0]!.blocks = [{ sets: 1, reps: 1, restSeconds: 60, shareOfAim: 1 }];
    });
    expect(onlySmallest).toEqual([]);
  });

  it('is that one band of a pair was taken to be like the other: not where both were read, nor where the pair was on the scale as it hangs', () => {
    const oneSide = said('oneSideMeasured', () => {});
    expect(oneSide).toEqual([{ code: 'oneSideMeasured', pairId: 'heavy' }]);
    const bothSides = said('oneSideMeasured', (records) => {
      const other = records.bandReading.map((one) => ({ ...one, id: `${one.id} b`, side: 'b' as const }));
      records.bandReading.push(...other);
    });
    const onScale = said('oneSideMeasured', (records) => {
      const reading = { hookupId: 'doubled', bandPairId: 'heavy', takenOn: '2026-01-01' };
      records.scaleReading = [
        { ...reading, id: '1', barHeightM: 0.9, pairForceN: 100 },
        { ...reading, id: '2', barHeightM: 1.7, pairForceN: 300 },
      ];
    });
    expect([...bothSides, ...onScale]).toEqual([]);
  });
});
