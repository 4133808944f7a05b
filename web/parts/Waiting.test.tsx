import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Waiting } from './Waiting.tsx';

test('whoever waits reads what the work is at beside a bar, and a screen reader hears it once', () => {
  const told = { done: 2, total: 16, doing: { code: 'ranking', at: 3, of: 8 } } as const;
  const html = renderToStaticMarkup(<Waiting what="Comparing all." told={told} onStop={() => {}} />);
  expect(html).toContain(
    '<span aria-hidden="true">Comparing every band, hookup and bar: lifter 3 of 8.</span>',
  );
  expect(html).toMatch(
    /<progress aria-label="Comparing all\." aria-valuetext="[^"]*3 of 8\." max="16" value="2">/,
  );
  expect(html).toContain('Stop');
});

test('work that tells nothing shows no bar', () => {
  const html = renderToStaticMarkup(<Waiting what="Comparing all." />);
  expect(html).not.toContain('progress');
  expect(html).not.toContain('only-read');
});
