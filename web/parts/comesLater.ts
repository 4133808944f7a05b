import { type ComponentType, lazy } from 'react';

/** A part of the screen whose code comes when it is first shown, or when somebody called `load` before. */
export function comesLater<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  return lazy(() =>
    load().then((part) => ({ default: part as ComponentType<object> })),
  ) as ComponentType<Props>;
}
