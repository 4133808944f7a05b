import { describe, expect, it } from 'vitest';
import { kindNames } from '#contract/records/allKinds.ts';
import { recordName } from '#contract/records/recordName.ts';
import { percent, percentFigure, percentToTenth } from '#contract/words/percent.ts';
import type { ArchiveLook } from './archiveLook.ts';
import { archiveWords } from './archiveWords.ts';

const kinds = [...kindNames, 'sets', 'prescriptions', 'takenPlans'];
const look = (
  name: string,
  newestOn: string | null,
  counts: Partial<ArchiveLook['counts']>,
): ArchiveLook => ({
  name,
  newestOn,
  counts: { ...(Object.fromEntries(kinds.map((kind) => [kind, 0])) as ArchiveLook['counts']), ...counts },
});
const words = (newestInFile: string | null, newestHere: string | null) =>
  archiveWords(
    'club.json',
    look('Millrace', newestInFile, { lifter: 3, bar: 1, club: 1 }),
    look('Here', newestHere, { lifter: 2, day: 4, club: 1 }),
    (date) => `<${date}>`,
  );

describe('what an archive holds beside the club whose place it may take', () => {
  it('is told with whose it is, how new, and what would be replaced', () => {
    const { isOf, replaced } = words('2026-03-01', '2026-02-01');
    expect(isOf).toBe(
      'club.json is an archive of Millrace; its newest entry is from <2026-03-01>. Nothing is wrong in it.',
    );
    expect(words(null, null).isOf).toBe('club.json is an archive of Millrace. Nothing is wrong in it.');
    expect(replaced).toMatch(/Here holds now would be replaced by what club\.json holds/);
  });

  it('is older only where its newest date is before the newest here', () => {
    expect(words('2026-01-31', '2026-02-01').older).toMatch(/older than what is here/);
    for (const [inFile, here] of [
      ['2026-02-01', '2026-02-01'],
      ['2026-03-01', '2026-02-01'],
      [null, '2026-02-01'],
      ['2026-02-01', null],
    ] as const)
      expect(words(inFile, here).older).toBeNull();
  });

  it('counts what either has, and names every kind', () => {
    expect(words(null, null).counts).toEqual([
      { kind: 'lifters', inFile: 3, here: 2 },
      { kind: 'training days', inFile: 0, here: 4 },
      { kind: 'bars', inFile: 1, here: 0 },
    ]);
    const all = look('All', null, Object.fromEntries(kinds.map((kind) => [kind, 1])));
    const { counts } = archiveWords('f', all, all, String);
    expect(counts).toHaveLength(kinds.length - 1);
    for (const { kind } of counts) expect(kind).toMatch(/^[a-z]/);
  });
});

const named = (kind: Parameters<typeof recordName>[0], record: object) => recordName(kind, record as never);

describe('a record in a sentence', () => {
  it('is named by its label, its name, its face or its date', () => {
    expect(named('bandPair', { label: 'Grey 44' })).toBe('band pair "Grey 44"');
    expect(named('lifter', { name: 'Ida Quill', bornOn: '2000-01-01' })).toBe('lifter "Ida Quill"');
    expect(named('disc', { faceMassKg: 2.5 })).toMatch(/ of 2\.5 kg$/);
    expect(named('bodyMass', { massKg: 80, takenOn: '2026-11-25' })).toBe('body mass of 2026-11-25');
  });
});

describe('a share', () => {
  it('is written in whole per cent, or to a tenth without an idle nought', () => {
    expect([percent(0.454), percentFigure(0.455), percentToTenth(0.375), percentToTenth(0.45)]).toEqual([
      '45 %',
      46,
      '37.5 %',
      '45 %',
    ]);
  });
});
