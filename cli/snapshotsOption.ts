import { Option } from 'commander';

/** `--snapshots`: where snapshots of the club are. */
export function snapshotsOption(): Option {
  return new Option(
    '--snapshots <folder>',
    "where snapshots of the club are put, best on another disk; without it, beside the club's file",
  ).env('RACKWRIGHT_SNAPSHOTS');
}
