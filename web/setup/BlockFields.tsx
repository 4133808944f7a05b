import { type Block, block as blockShape } from '#contract/records/day.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { figuresIn } from '#web/parts/limits.ts';
import { PercentField } from '#web/parts/PercentField.tsx';

const mostBlocks = 12;
const limits = figuresIn(blockShape.shape);

/** The steps of a group's work: sets, reps, rest, and how much of the aim is on the bar. */
export function BlockFields(props: { blocks: readonly Block[]; onChange: (blocks: Block[]) => void }) {
  const { blocks, onChange } = props;
  const put = (index: number, change: Partial<Block>) =>
    onChange(blocks.map((block, i) => (i === index ? { ...block, ...change } : block)));
  const last = blocks[blocks.length - 1];
  return (
    <div className="stack tight">
      <ol className="stack tight">
        {blocks.map((block, index) => (
          <li key={index} className="block-fields" aria-label={`Step ${index + 1}`}>
            <FigureField
              label="Sets"
              {...limits.sets}
              value={block.sets}
              onChange={(sets) => put(index, { sets })}
            />
            <FigureField
              label="Reps"
              {...limits.reps}
              value={block.reps}
              onChange={(reps) => put(index, { reps })}
            />
            <FigureField
              label="Rest"
              word="s"
              {...limits.restSeconds}
              value={block.restSeconds}
              onChange={(restSeconds) => put(index, { restSeconds })}
            />
            <PercentField
              label="Of the aim"
              {...limits.shareOfAim}
              value={block.shareOfAim}
              onChange={(shareOfAim) => put(index, { shareOfAim })}
            />
            {blocks.length > 1 && (
              <button
                type="button"
                className="plain"
                aria-label={`Leave out step ${index + 1}`}
                onClick={() => onChange(blocks.filter((_, i) => i !== index))}
              >
                Leave out
              </button>
            )}
          </li>
        ))}
      </ol>
      {last && blocks.length < mostBlocks && (
        <div>
          <button type="button" className="plain" onClick={() => onChange([...blocks, { ...last }])}>
            Another step
          </button>
        </div>
      )}
    </div>
  );
}
