import type { LoadFigure } from '#contract/season/loadFigures.ts';

/** What a week comes to, number by number, each with what it is. */
export function LoadFigures({ figures }: { figures: readonly LoadFigure[] }) {
  return (
    <dl className="season-figures">
      {figures.map(({ word, figure, says }) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd className="season-figure">{figure}</dd>
          <dd className="small quiet">{says}</dd>
        </div>
      ))}
    </dl>
  );
}
