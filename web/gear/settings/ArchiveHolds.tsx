import type { ArchiveLook } from '#contract/archive/archiveLook.ts';
import { dateText } from '#web/parts/localToday.ts';

/** What an archive holds beside what the club holds now, a line for each kind of which either has any. */
export function ArchiveHolds(props: { name: string; archive: ArchiveLook; here: ArchiveLook }) {
  const { name, archive, here } = props;
  const kinds = (Object.keys(words) as (keyof typeof words)[]).filter(
    (kind) => archive.counts[kind] + here.counts[kind] > 0,
  );
  return (
    <div className="stack tight">
      <output>
        {name} is an archive of <strong>{archive.name}</strong>
        {archive.newestOn && `; the newest in it is of ${dateText(archive.newestOn)}`}. Nothing is wrong in
        it.
        {isOlder(archive, here) && <strong> It is older than what is here.</strong>}
      </output>
      <table className="table archive-holds" aria-label={`What ${name} holds`}>
        <thead>
          <tr>
            <th scope="col" aria-label="kind" />
            <th scope="col" className="number">
              in the file
            </th>
            <th scope="col" className="number">
              here now
            </th>
          </tr>
        </thead>
        <tbody>
          {kinds.map((kind) => (
            <tr key={kind}>
              <th scope="row">{words[kind]}</th>
              <td className="number">{archive.counts[kind]}</td>
              <td className="number">{here.counts[kind]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function isOlder(archive: ArchiveLook, here: ArchiveLook): boolean {
  return archive.newestOn !== null && here.newestOn !== null && archive.newestOn < here.newestOn;
}

/** In the order in which a coach would miss them. */
const words = {
  lifter: 'lifters',
  sets: 'logged sets',
  best: 'bests',
  liftHeights: 'measured heights',
  bodyMass: 'body masses',
  day: 'training days',
  prescriptions: 'days worked out',
  bandPair: 'band pairs',
  bandReading: 'band readings',
  chainPair: 'kinds of chain',
  rack: 'racks',
  anchor: 'anchor points',
  hookup: 'hookups',
  scaleReading: 'readings under the bar',
  bar: 'bars',
  collarPair: 'collar pairs',
  disc: 'kinds of disc',
  box: 'boxes and mats',
} satisfies Record<Exclude<keyof ArchiveLook['counts'], 'club'>, string>;
