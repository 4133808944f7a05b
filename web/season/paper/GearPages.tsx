import { type FittedPage, FittedPages } from '#web/print/FittedPages.tsx';
import { useFitting } from '#web/print/useFitting.ts';
import { type ClubPaper, SeasonPaperHead } from './SeasonPaperHead.tsx';

/** Where racks and bands are not enough for what is planned, all seasons together, on as many pages as that needs; nothing where they are. */
export function GearPages(props: ClubPaper & { sentences: readonly string[] }) {
  return (
    <FittedPages rows={props.sentences}>
      {(page) => page.rows.length > 0 && <GearPage key={page.page} {...props} {...page} />}
    </FittedPages>
  );
}

function GearPage(props: ClubPaper & FittedPage<string>) {
  const page = useFitting<HTMLElement>(0, props.onTooFull);
  return (
    <section
      ref={page}
      className={`paper season-paper ${props.paper}`}
      aria-label={`Racks and bands ahead, page ${props.page}`}
    >
      <SeasonPaperHead {...props} title="Racks and bands ahead" />
      <p>All seasons of the club together, since they share the gear.</p>
      <ul className="season-paper-short">
        {props.rows.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
