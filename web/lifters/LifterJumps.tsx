/** Straight to what one came for: the page is long, and six lifters wait. */
export function LifterJumps({ hasEstimates }: { hasEstimates: boolean }) {
  const places = [
    { id: 'setup', word: 'This setup' },
    { id: 'strength', word: 'Strength' },
    ...(hasEstimates ? [{ id: 'any-setup', word: 'Maximum for any setup' }] : []),
    { id: 'meet', word: 'Next meet' },
    { id: 'restrictions', word: 'Restrictions' },
    { id: 'heights', word: 'Heights' },
    { id: 'bests', word: 'Bests' },
    { id: 'body-mass', word: 'Body mass' },
  ];
  return (
    <nav className="lifters-jumps screen-only" aria-label="On this page">
      {places.map(({ id, word }) => (
        <a key={id} href={`#${id}`}>
          {word}
        </a>
      ))}
    </nav>
  );
}
