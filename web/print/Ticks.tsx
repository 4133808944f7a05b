/** A box to tick with a pencil for every set; for the eye only, the count stands beside it. */
export function Ticks({ count }: { count: number }) {
  return (
    <span className="ticks" aria-hidden="true">
      {Array.from({ length: count }, (_, set) => (
        <i key={set} />
      ))}
    </span>
  );
}
