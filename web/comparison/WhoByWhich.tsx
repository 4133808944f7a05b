import { useState } from 'react';
import type { Comparison } from '#contract/records/comparison.ts';
import { dateText } from '#contract/words/dateText.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { TakeOutForm } from './TakeOutForm.tsx';
import { type Drawn, useDrawn } from './useDrawn.ts';

/** Who trains by which way, pair by pair; a row opens, and takes that lifter out. */
export function WhoByWhich({ comparison, today }: { comparison: Comparison; today: string }) {
  const { nameOf, outOf } = useDrawn(comparison);
  const [openId, setOpen] = useState<string | null>(null);
  const { planDocument: plan } = comparison;
  const byPair = plan.drawn.toSorted(
    (a, b) => (a.pair ?? plan.drawn.length) - (b.pair ?? plan.drawn.length) || a.way.localeCompare(b.way),
  );
  const open = plan.drawn.find(({ lifterId }) => lifterId === openId);
  const columns: Column<Drawn>[] = [
    { key: 'pair', head: 'Pair', cell: ({ pair }) => pair ?? 'alone' },
    { key: 'name', head: 'Lifter', cell: nameOf },
    { key: 'way', head: 'Trains by', cell: ({ way }) => way },
    {
      key: 'out',
      head: 'Taken out',
      cell: (one) => {
        const out = outOf(one);
        return out ? `from ${dateText(out.fromOn)}${out.why === '' ? '' : `: ${out.why}`}` : '';
      },
    },
  ];
  return (
    <section className="stack ruled" aria-labelledby="comparison-who">
      <h2 id="comparison-who">Who trains by which</h2>
      {open && (
        <TakeOutForm
          key={open.lifterId}
          comparison={comparison}
          lifterId={open.lifterId}
          name={nameOf(open)}
          kept={outOf(open)}
          today={today}
          onLeave={() => setOpen(null)}
        />
      )}
      <DataTable
        label="Who trains by which"
        columns={columns}
        rows={byPair}
        keyOf={({ lifterId }) => lifterId}
        nameOf={nameOf}
        selectedKey={openId}
        onOpen={({ lifterId }) => setOpen(lifterId)}
      />
      <p className="small quiet">
        Open a row to take that lifter out, at any time and without a reason. A lifter who goes over to the
        other way still counts by the one drawn.
      </p>
    </section>
  );
}
