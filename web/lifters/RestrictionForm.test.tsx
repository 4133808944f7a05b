import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { Restriction } from '#contract/records/lifters.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { clubKey } from '#web/api/useClub.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { RestrictionForm } from './RestrictionForm.tsx';

const club = smallClub();
const kept = club.restriction[0]!;

/** What the form says beside its fields, by label, when it opens on such a restriction. */
function wrongIn(change: Partial<Restriction>): (readonly [label: string, sentence: string])[] {
  const client = new QueryClient();
  client.setQueryData(clubKey, { records: club, seq: 1 });
  const html = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="lb" clubLength="in">
        <RestrictionForm
          lifterId={kept.lifterId}
          restriction={{ ...kept, ...change }}
          today="2026-11-10"
          onLeave={() => {}}
        />
      </ViewUnits>
    </QueryClientProvider>,
  );
  const fields = html.split('<div class="field wrong">').slice(1);
  return fields.map((field) => [textOf(field, 'label'), textOf(field, 'p')] as const);
}

function textOf(html: string, tag: string): string {
  return new RegExp(`<${tag} [^>]*>([^<]*)`).exec(html)![1]!;
}

test('a last day before the first is refused beside its field, by the label and the date that the coach reads', () => {
  expect(wrongIn({ fromOn: '2026-11-02', untilOn: '2026-11-01' })).toEqual([
    ['Last day', 'Last day is 1 Nov 2026; it must be no earlier than the first day.'],
  ]);
  expect(wrongIn({ fromOn: '2026-11-02', untilOn: '2026-11-02' })).toEqual([]);
});
