import { assert, date, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { millraceClub } from './millraceClub.ts';

const TODAY = '2026-11-25';
const club = millraceClub(TODAY);

/** The club's text without its dates. */
function undated(records: ClubRecords): string {
  return JSON.stringify(records).replace(/"\d{4}-\d{2}-\d{2}"/g, '""');
}

function has(name: keyof ClubRecords, id: string | null): boolean {
  return id === null || club[name].some((record) => record.id === id);
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

  it('has done everything before today, and trains last week, tomorrow and in four days', () => {
    const { day, ...rest } = club;
    const dates = JSON.stringify(rest).match(/\d{4}-\d{2}-\d{2}/g)!;
    expect(dates.every((date) => date < TODAY)).toBe(true);
    expect(day.map(({ date }) => date)).toEqual(['2026-11-19', '2026-11-26', '2026-11-29']);
  });
});

describe('what belongs together', () => {
  it('gear hangs on racks that exist', () => {
    for (const rack of club.rack)
      expect(has('bar', rack.barId) && has('collarPair', rack.collarPairId)).toBe(true);
    for (const anchor of club.anchor) expect(has('rack', anchor.rackId)).toBe(true);
    for (const hookup of club.hookup) {
      expect(club.anchor.find(({ id }) => id === hookup.anchorId)?.rackId).toBe(hookup.rackId);
    }
    for (const reading of club.scaleReading) {
      expect(has('hookup', reading.hookupId) && has('bandPair', reading.bandPairId)).toBe(true);
    }
    for (const reading of club.bandReading) expect(has('bandPair', reading.bandPairId)).toBe(true);
  });

  it('masses, heights, bests and places are those of members', () => {
    for (const kept of [...club.bodyMass, ...club.liftHeights, ...club.best]) {
      expect(has('lifter', kept.lifterId)).toBe(true);
    }
    for (const place of club.day.flatMap(({ groups }) => groups.flatMap(({ places }) => places))) {
      expect(has('lifter', place.lifterId) && has('rack', place.rackId)).toBe(true);
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
