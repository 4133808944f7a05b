import { assert, date, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { labelKey } from '#contract/records/labels.ts';
import { references, referredBy } from '#contract/records/references.ts';
import { millraceClub } from './millraceClub.ts';

const TODAY = '2026-11-25';
const club = millraceClub(TODAY);

/** The club's text without its dates. */
function undated(records: ClubRecords): string {
  return JSON.stringify(records).replace(/"\d{4}-\d{2}-\d{2}"/g, '""');
}

describe('the invented club', () => {
  it('says that it is invented', () => {
    expect(club.club).toHaveLength(1);
    expect(club.club[0]!.invented).toBe(true);
  });

  it.each(kindNames)('fills every field of each %s as its shape asks, nothing left to a default', (name) => {
    expect(club[name].length).toBeGreaterThan(0);
    for (const record of club[name]) expect(allKinds[name].shape.parse(record)).toEqual(record);
  });

  it.each(kindNames)('gives each %s an id of its own', (name) => {
    expect(new Set(club[name].map(({ id }) => id)).size).toBe(club[name].length);
  });

  it('is the same on every machine and only moves with the date', () => {
    expect(millraceClub(TODAY)).toEqual(club);
    assert(
      property(
        date({ min: new Date('2024-01-01'), max: new Date('2040-01-01'), noInvalidDate: true }),
        (any) => {
          expect(undated(millraceClub(any.toISOString().slice(0, 10)))).toBe(undated(club));
        },
      ),
      { numRuns: 20 },
    );
  });

  it('has done everything before today but what it plans, and trains last week, tomorrow and in four days', () => {
    const planned = ['day', 'method', 'meet', 'season', 'absence', 'plannedByHand', 'comparison'];
    const { day } = club;
    const rest = Object.entries(club).filter(([kind]) => !planned.includes(kind));
    // What holds for a while may end ahead, but it has begun.
    const begun = JSON.stringify(rest, (field, value) => (field === 'untilOn' ? null : value));
    const dates = begun.match(/\d{4}-\d{2}-\d{2}/g)!;
    expect(dates.every((date) => date < TODAY)).toBe(true);
    expect(day.map(({ date }) => date)).toEqual(['2026-11-19', '2026-11-26', '2026-11-29']);
  });
});

describe('what belongs together', () => {
  it.each([...new Set(references.map(({ from }) => from))])(
    'each %s names only records of the club',
    (name) => {
      const referred = club[name].flatMap((record) => referredBy(name, record));
      expect(referred.length).toBeGreaterThan(0);
      for (const { reference, field, id } of referred) {
        expect(
          club[reference.to].map((other) => other.id),
          field,
        ).toContain(id);
      }
    },
  );

  it('no two of a kind carry one label', () => {
    const labelled = kindNames.map((name) => club[name].map(labelKey).filter((key) => key !== null));
    for (const keys of labelled) expect(new Set(keys).size).toBe(keys.length);
  });

  it('a hookup hangs on an anchor point of its own rack', () => {
    for (const { anchorId, rackId } of club.hookup) {
      expect(club.anchor.find(({ id }) => id === anchorId)?.rackId).toBe(rackId);
    }
  });

  it('a best hangs its bands by a hookup of its own rack, and never before they were bought', () => {
    for (const { setup, doneOn } of club.best) {
      for (const { bandPairId, hookupId } of setup.bands) {
        expect(club.hookup.find(({ id }) => id === hookupId)?.rackId).toBe(setup.rackId);
        expect(club.bandPair.find(({ id }) => id === bandPairId)!.installedOn! < doneOn).toBe(true);
      }
    }
    expect(club.best.some(({ setup }) => setup.bands.length > 1)).toBe(true);
    expect(club.best.some(({ setup }) => setup.chains.length > 0)).toBe(true);
  });
});
