import { group } from './day.ts';
import { kind, label, note } from './kind.ts';

const { work, lift, start, aim, blocks, leastChance, bounds } = group.shape;

/** The work of a group without its lifters, kept under the club's own name to begin another group with. */
export const workTemplate = kind(
  'workTemplate',
  'kept work',
  { label, work, lift, start, aim, blocks, leastChance, bounds, note },
  {
    many: 'kept works',
    belongsTo: {},
    uses: {},
    feeds: {},
    date: null,
    isFixed: false,
    sinceArchive: 4,
    filesAt: 'club',
  },
);
