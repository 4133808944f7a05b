import { pxPerMm } from '#contract/paper/paperSize.ts';
import { SeasonHead } from '#web/charts/SeasonHead.tsx';
import { SeasonLegend } from '#web/charts/SeasonLegend.tsx';
import { SeasonRow } from '#web/charts/SeasonRow.tsx';
import { phasesIn } from '../phasesIn.ts';
import { seasonScene } from '../seasonRows.ts';
import { type ClubPaper, SeasonPaperHead } from './SeasonPaperHead.tsx';

/** Room of a page for the picture, head and legend of the page taken off (mm), as paper.css has its pages. */
const roomMm = { a4: { wide: 193, high: 212 }, letter: { wide: 198, high: 194 } };
/** Room for names, as the longest needs it: narrow letters are about so wide; what is longer still takes two lines (mm). */
const namesRoomMm = { least: 38, most: 58, letter: 1.6 };
/** Few lifters do not fill a page by growing without end. */
const mostRowPx = 84;

/** The season of everybody on a page: time across, lifters down, all lifts together. */
export function ClubPage(props: ClubPaper & { page: number; pages: number }) {
  const { season, paper } = props;
  const scene = seasonScene(season, null);
  const { wide, high } = roomMm[paper];
  const weeks = Math.max(1, scene.mondays.length);
  const longest = Math.max(0, ...scene.rows.map(({ name }) => name.length));
  const namesMm = Math.min(namesRoomMm.most, Math.max(namesRoomMm.least, longest * namesRoomMm.letter));
  const frame = {
    weekPx: ((wide - namesMm) * pxPerMm) / weeks,
    weeks,
    rowPx: Math.min(mostRowPx, Math.floor((high * pxPerMm) / Math.max(1, scene.rows.length)) - 1),
    todayAt: scene.todayAt,
  };
  return (
    <section className={`paper season-paper ${paper}`} aria-label={`${season.title}, page ${props.page}`}>
      <SeasonPaperHead {...props} title="Season" />
      <div className="season-paper-picture" style={{ gridTemplateColumns: `${namesMm}mm 1fr` }}>
        <div />
        <SeasonHead firstMonday={scene.mondays[0] ?? season.today} meets={scene.meets} frame={frame} />
        {scene.rows.map((row) => [
          <p key={`${row.key} name`} className="season-paper-name" style={{ height: frame.rowPx + 1 }}>
            {row.name}
          </p>,
          <div key={row.key} className="season-paper-row">
            <SeasonRow row={row} frame={frame} />
          </div>,
        ])}
      </div>
      <SeasonLegend phases={phasesIn(season, season.lifters)} />
      <p className="fine">
        All lifts together. Shares are of the maximum that percentages refer to. A plan, not a permission:
        local rules and the coach come first.
      </p>
    </section>
  );
}
