import { expect, test } from 'vitest';
import type { DoneChange } from '#contract/changes/doneChange.ts';
import { doneSentence } from './doneSentence.ts';

type Told = Parameters<typeof doneSentence>[0];
const nothing: Told = { back: null, replaced: false, records: [], sets: [] };
const record = (did: DoneChange['records'][number]['did'], count = 1): DoneChange['records'][number] => ({
  kind: 'bar',
  did,
  count,
  called: 'bar "Thick"',
  of: null,
});
const sets = (did: 'counts' | 'struck', count: number, isNew = true, lifter = 'Ida Quill') => ({
  did,
  isNew,
  count,
  lifter,
  lift: 'squat' as const,
});

test.each<[string, Partial<Told>, string]>([
  ['a new record', { records: [record('added')] }, 'Added the bar "Thick".'],
  ['many alike', { records: [record('changed', 3)] }, 'Changed 3 bars.'],
  [
    'what goes with it',
    {
      records: [
        { ...record('removed'), kind: 'lifter', called: 'lifter "Ida Quill"' },
        { ...record('removed', 4), kind: 'best' },
      ],
    },
    'Removed the lifter "Ida Quill", and 4 records with it.',
  ],
  [
    'whose it is',
    {
      records: [{ ...record('added'), kind: 'bodyMass', called: 'body mass of 2026-11-25', of: 'Ida Quill' }],
    },
    'Added the body mass of 2026-11-25 of Ida Quill.',
  ],
  [
    'the settings',
    { records: [{ ...record('changed'), kind: 'club', called: 'club' }] },
    'Changed the settings of the club.',
  ],
  ['sets', { sets: [sets('counts', 2)] }, 'Logged 2 sets: Ida Quill, squat.'],
  ['one set again', { sets: [sets('counts', 1, false)] }, 'Restored 1 set: Ida Quill, squat.'],
  ['a mistaken set', { sets: [sets('struck', 1, false)] }, 'Struck 1 set: Ida Quill, squat.'],
  [
    'a corrected one',
    { sets: [sets('counts', 1), sets('struck', 1, false)] },
    'Corrected 1 set: Ida Quill, squat.',
  ],
  [
    'sets of several',
    { sets: [sets('counts', 2), sets('counts', 1, true, 'Emre')] },
    'Logged 3 sets: Ida Quill and 1 other, squat.',
  ],
  [
    'one taken back',
    { back: { of: 3, again: false }, records: [record('added')] },
    'Taken back: added the bar "Thick".',
  ],
  ['another club', { replaced: true }, 'The whole club replaced by another.'],
])('%s is said in one sentence', (_what, told, sentence) => {
  expect(doneSentence({ ...nothing, ...told })).toBe(sentence);
});
