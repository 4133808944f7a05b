import { useState } from 'react';
import type { CsvProblem } from '#contract/csv/CsvProblem.ts';
import { readTrack } from '#contract/track/readTrack.ts';
import { repsOfTrack } from '#core/track/repsOfTrack.ts';
import type { TrackReading } from '#core/track/Track.ts';
import { FilePick, tableFile } from '#web/parts/FilePick.tsx';
import { TrackFound, type TrackSpeeds } from './TrackFound.tsx';

type Tried = { name: string } & ({ reading: TrackReading } | { problems: readonly CsvProblem[] });

/**
 * A file of bar height over time becomes the reps and speeds of a set, in the browser; nothing is sent. `onTake` puts
 * them into the set that is being written down.
 */
export function TrackDoor({ onTake }: { onTake: (speeds: TrackSpeeds) => void }) {
  const [tried, setTried] = useState<Tried | null>(null);
  const read = async (file: File) => {
    const track = readTrack(await file.text());
    setTried({
      name: file.name,
      ...('problems' in track ? track : { reading: repsOfTrack(track.points) }),
    });
  };
  const unreadable = (name: string) =>
    setTried({ name, problems: [{ line: 1, column: '', message: 'The file cannot be read.' }] });
  return (
    <details className="csv-door">
      <summary>Speeds from a track of the bar</summary>
      <div className="stack">
        <div className="row">
          <FilePick
            word="Read a track"
            accept={tableFile}
            onPick={(file) => read(file).catch(() => unreadable(file.name))}
          />
        </div>
        <p className="small quiet">
          A table of time and bar height whose first line names columns and units: t_s and z_m, say, or t_ms
          and z_mm. 15 readings a second or more.
        </p>
        {tried && 'problems' in tried && (
          <div role="alert">
            {tried.problems.map(({ line, column, message }) => (
              <p key={`${line} ${column}`} className="stop">
                {tried.name}, line {line}
                {column !== '' && `, ${column}`}: {message}
              </p>
            ))}
          </div>
        )}
        {tried && 'reading' in tried && (
          <TrackFound
            name={tried.name}
            reading={tried.reading}
            onTake={(speeds) => {
              onTake(speeds);
              setTried(null);
            }}
            onLeave={() => setTried(null)}
          />
        )}
      </div>
    </details>
  );
}
