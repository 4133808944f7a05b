import type { Day } from '#contract/records/day.ts';
import { useClub } from '#web/api/useClub.ts';
import { rackElementId } from './rackElementId.ts';

/** Straight to a rack, past everything that is settled before the training begins. */
export function RackLinks({ day }: { day: Day }) {
  const { rack: racks } = useClub();
  const used = day.groups.flatMap((group) =>
    racks
      .filter((rack) => group.places.some((place) => place.rackId === rack.id))
      .map((rack) => ({
        id: rackElementId(group.id, rack.id),
        word: day.groups.length > 1 ? `${rack.label}: ${group.title}` : rack.label,
      })),
  );
  if (used.length < 2) return null;
  return (
    <nav className="rack-links" aria-label="Racks of this day">
      <span className="quiet">Straight to</span>
      {used.map(({ id, word }) => (
        <a key={id} href={`#${id}`}>
          {word}
        </a>
      ))}
    </nav>
  );
}
