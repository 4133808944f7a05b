/** Above every page while nothing can be saved: why, and how to keep what is there. */
export function NotSaving({ trouble }: { trouble: string | null }) {
  if (trouble === null) return null;
  return (
    <div className="shell-told-above" role="alert">
      <p className="stop">{trouble}</p>
      <a className="button strong" href="/api/archive" download>
        Download the archive
      </a>
    </div>
  );
}
