import { type ComponentType, Suspense } from 'react';
import { comesLater } from './comesLater.ts';

/** A part of the page that opens at a tap, or under the head of the page: the rest stays in sight while its code comes. */
export function onDemand<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  const Part = comesLater(load);
  return (props) => (
    <Suspense>
      <Part {...props} />
    </Suspense>
  );
}
