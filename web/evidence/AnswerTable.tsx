import type { EffectRange, Question } from '#contract/evidence/evidenceReport.ts';
import { signedText } from '#contract/words/signedText.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { countedText } from './evidenceWords.ts';
import type { NamedLine } from './shownLines.ts';

/** The numbers of one answer: effect, both ranges, as it lay before correction, and what it rests on. */
export function AnswerTable(props: {
  label: string;
  question: Question;
  measure: string;
  lines: readonly NamedLine[];
}) {
  const { question, lines } = props;
  const isCorrected = lines.some(({ effect, naive }) => naive !== null && naive.value !== effect?.value);
  const columns: Column<NamedLine>[] = [
    { key: 'who', head: question === 'variants' ? 'Lift' : 'Who', cell: ({ name }) => name },
    { key: 'effect', head: 'Effect', numeric: true, cell: ({ effect }) => effect && one(effect.value) },
    { key: '80', head: '80 %', numeric: true, cell: ({ effect }) => range(effect, 'low80', 'high80') },
    {
      key: '95',
      head: '95 %',
      numeric: true,
      wideOnly: true,
      cell: ({ effect }) => range(effect, 'low95', 'high95'),
    },
    ...(isCorrected
      ? [
          {
            key: 'naive',
            head: 'Uncorrected',
            numeric: true,
            wideOnly: true,
            cell: ({ naive }: NamedLine) => naive && one(naive.value),
          },
        ]
      : []),
    { key: 'lifters', head: 'Lifters', numeric: true, wideOnly: true, cell: ({ line }) => line.lifters },
    { key: 'count', head: countedText(question), numeric: true, cell: ({ line }) => line.observations },
  ];
  return (
    <div className="stack tight">
      <p className="small quiet">{props.measure}</p>
      <DataTable
        label={props.label}
        columns={columns}
        rows={lines}
        keyOf={({ key }) => key}
        nameOf={({ name }) => name}
      />
    </div>
  );
}

function range(effect: EffectRange | null, low: 'low80' | 'low95', high: 'high80' | 'high95') {
  return effect ? `${one(effect[low])} to ${one(effect[high])}` : 'too little';
}

function one(value: number): string {
  return signedText(value, { decimals: 1 });
}
