import { PlainHead } from '#web/print/PlainHead.tsx';
import type { SeasonView } from '../SeasonView.ts';

/** Above each page: whose it is, by which method, when it was printed. */
export function SeasonPaperHead(props: {
  title: string;
  season: SeasonView;
  clubName: string;
  isInvented: boolean;
  page: number;
  pages: number;
}) {
  const { season, ...head } = props;
  const { title, method, today } = season;
  return (
    <PlainHead {...head} today={today} says={`${title}, by ${method.title}, version ${method.version}.`} />
  );
}
