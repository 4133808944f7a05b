import type { Paper } from '#contract/paper/paperSize.ts';
import { PlainHead } from '#web/print/PlainHead.tsx';
import type { LifterSeason, SeasonView } from '../SeasonView.ts';

/** What every page of a season is told. */
export interface ClubPaper {
  season: SeasonView;
  paper: Paper;
  clubName: string;
  isInvented: boolean;
}

/** What every page of one lifter's season is told. */
export interface SeasonPaper extends ClubPaper {
  of: LifterSeason;
}

/** Above each page: whose it is, by which method, when it was printed. */
export function SeasonPaperHead(props: ClubPaper & { title: string; page: number; pages: number }) {
  const { title, method, today } = props.season;
  return (
    <PlainHead {...props} today={today} says={`${title}, by ${method.title}, version ${method.version}.`} />
  );
}
