import type { ClubRecords } from '#contract/records/allKinds.ts';

/** One thing that a club needs before its first day's loads can be worked out, and where it is done. */
export interface FirstStep {
  word: string;
  href: string;
  says: string;
  done: boolean;
}

type Needed = Pick<
  ClubRecords,
  'bar' | 'disc' | 'rack' | 'hookup' | 'bandReading' | 'box' | 'lifter' | 'best'
>;

/** The way from nothing to a first training day, in the order in which one thing needs the other. */
export function firstSteps(records: Needed): FirstStep[] {
  const some = (...kinds: (keyof Needed)[]) => kinds.every((kind) => records[kind].length > 0);
  return [
    {
      word: 'Bars and discs',
      href: '~/gear/iron',
      says: 'what each truly weighs, collars too.',
      done: some('bar', 'disc'),
    },
    {
      word: 'A rack',
      href: '~/gear/racks',
      says: 'its bar, the points that bands hang on, and the hookups in use.',
      done: some('rack', 'hookup'),
    },
    {
      word: 'Bands',
      href: '~/gear/bands/new',
      says: 'hang each from a scale and read it five times.',
      done: some('bandReading'),
    },
    { word: 'Boxes', href: '~/gear/boxes', says: 'for lifts that start from one.', done: some('box') },
    {
      word: 'Lifters',
      href: '~/lifters',
      says: 'stature, bar heights and a best each: from these follows how strong they are.',
      done: some('lifter', 'best'),
    },
  ];
}
