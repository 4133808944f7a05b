import { useSearchParams } from 'wouter';

/** A choice that stands in the page's address, so that it outlives a reload and can be sent on; at its usual value it is left out. */
export function useInAddress(name: string, usual = ''): [string, (value: string) => void] {
  const [search, setSearch] = useSearchParams();
  const set = (value: string) =>
    setSearch(
      (now) => {
        const next = new URLSearchParams(now);
        if (value === usual) next.delete(name);
        else next.set(name, value);
        return next;
      },
      { replace: true },
    );
  return [search.get(name) ?? usual, set];
}
