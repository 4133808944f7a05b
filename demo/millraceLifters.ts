import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { dayFrom } from './dayFrom.ts';
import { bell } from './readScale.ts';

type Lifters = Pick<ClubRecords, 'lifter' | 'bodyMass'>;

interface InventedLifter {
  id: string;
  name: string;
  ageDays: number;
  category: RecordOf<'lifter'>['category'];
  statureM: number;
  equipment: RecordOf<'lifter'>['equipment'];
  /** Days since the first weighing in the club, then body mass at the first and at the last one. */
  since: number;
  massKg: readonly [number, number];
  note: string;
}

/** Fourteen invented people. Any likeness to a real person is chance. */
const PEOPLE: readonly InventedLifter[] = [
  {
    id: 'ilse',
    name: 'Ilse Vandermolen',
    ageDays: 11_480,
    category: 'women',
    statureM: 1.5,
    equipment: 'raw',
    since: 728,
    massKg: [50.9, 51.7],
    note: 'Holds the county squat record in her class. Stands close, sits straight down.',
  },
  {
    id: 'hana',
    name: 'Hana Morikubo',
    ageDays: 6_020,
    category: 'women',
    statureM: 1.58,
    equipment: 'raw',
    since: 410,
    massKg: [53.4, 56.8],
    note: "Sixteen: consent and a parent's phone number are in the folder. No true maximum without the head coach.",
  },
  {
    id: 'tereza',
    name: 'Tereza Holoubková',
    ageDays: 9_990,
    category: 'women',
    statureM: 1.66,
    equipment: 'raw',
    since: 720,
    massKg: [64.8, 62.6],
    note: '',
  },
  {
    id: 'nomvula',
    name: 'Nomvula Khanyase',
    ageDays: 12_905,
    category: 'women',
    statureM: 1.69,
    equipment: 'raw',
    since: 300,
    massKg: [74.6, 71.8],
    note: 'Came from rowing. Bar heights still to be measured.',
  },
  {
    id: 'saoirse',
    name: 'Saoirse Tiernan-Walsh',
    ageDays: 8_870,
    category: 'women',
    statureM: 1.74,
    equipment: 'single-ply',
    since: 700,
    massKg: [73.1, 75.6],
    note: 'Trains raw from the box, competes in a single-ply suit.',
  },
  {
    id: 'maribel',
    name: 'Maribel Ancajas',
    ageDays: 15_410,
    category: 'women',
    statureM: 1.63,
    equipment: 'raw',
    since: 725,
    massKg: [93.5, 90.2],
    note: 'Left knee: warm up longer, no choked bands that pull forward.',
  },
  {
    id: 'odhran',
    name: 'Odhrán McGillacuddy',
    ageDays: 7_150,
    category: 'men',
    statureM: 1.65,
    equipment: 'raw',
    since: 690,
    massKg: [61.5, 65.6],
    note: '',
  },
  {
    id: 'ruben',
    name: 'Ruben Achterveld',
    ageDays: 8_105,
    category: 'men',
    statureM: 1.7,
    equipment: 'raw',
    since: 160,
    massKg: [71.9, 74.3],
    note: 'Started this year. Bar heights still to be measured.',
  },
  {
    id: 'emre',
    name: 'Emre Karataylı',
    ageDays: 10_630,
    category: 'men',
    statureM: 1.74,
    equipment: 'wraps',
    since: 726,
    massKg: [81.2, 82.4],
    note: '',
  },
  {
    id: 'kwabena',
    name: 'Kwabena Ofosu-Tandoh',
    ageDays: 12_260,
    category: 'men',
    statureM: 1.78,
    equipment: 'raw',
    since: 728,
    massKg: [90.6, 92.7],
    note: 'Best deadlift of the raw men in the club, whatever Bastien says.',
  },
  {
    id: 'lars',
    name: 'Lars Østermark',
    ageDays: 13_700,
    category: 'men',
    statureM: 1.88,
    equipment: 'raw',
    since: 728,
    massKg: [106.8, 104.3],
    note: 'Coaches the Thursday beginners.',
  },
  {
    id: 'dragan',
    name: 'Dragan Veselović',
    ageDays: 21_310,
    category: 'men',
    statureM: 1.8,
    equipment: 'single-ply',
    since: 728,
    massKg: [112.4, 109.6],
    note: 'Oldest member. Shoulder: bar a hand lower on the back.',
  },
  {
    id: 'bastien',
    name: 'Bastien Corvellou',
    ageDays: 9_720,
    category: 'men',
    statureM: 1.97,
    equipment: 'raw',
    since: 560,
    massKg: [112.3, 118.5],
    note: 'Tallest of the club: his doubled bands run longest. Check the stretch.',
  },
  {
    id: 'tevita',
    name: 'Tevita Moalahi',
    ageDays: 12_610,
    category: 'men',
    statureM: 1.86,
    equipment: 'multi-ply',
    since: 728,
    massKg: [139.8, 145.1],
    note: 'National squat record in his class, multi-ply.',
  },
];

const DAYS_BETWEEN_WEIGHINGS = 49;
/** Water and breakfast: standard deviation of a weighing about the trend, as a share. */
const WEIGHING_SHARE = 0.006;

/** Those who train before work; the others come in the evening. */
const EARLY_CREW = new Set(['tereza', 'ilse', 'maribel', 'odhran', 'emre', 'kwabena', 'lars', 'bastien']);

/** Members of the Millrace Barbell Club and what they weighed over two years. All of them are invented. */
export function millraceLifters(today: string): Lifters {
  return {
    lifter: PEOPLE.map((person) => ({
      id: `lifter-${person.id}`,
      name: person.name,
      bornOn: dayFrom(today, -person.ageDays),
      category: person.category,
      statureM: person.statureM,
      equipment: person.equipment,
      leftOn: null,
      labels: [EARLY_CREW.has(person.id) ? 'early crew' : 'late crew'],
      note: person.note,
    })),
    bodyMass: PEOPLE.flatMap((person, index) => weighings(person, index, today)),
  };
}

function weighings(person: InventedLifter, personIndex: number, today: string): ClubRecords['bodyMass'] {
  const count = Math.floor(person.since / DAYS_BETWEEN_WEIGHINGS) + 1;
  return Array.from({ length: count }, (_, index) => {
    const [firstKg, lastKg] = person.massKg;
    const trendKg = firstKg + ((lastKg - firstKg) * index) / (count - 1);
    const massKg = trendKg * (1 + WEIGHING_SHARE * bell(2000 + 40 * personIndex + index));
    return {
      id: `mass-${person.id}-${index + 1}`,
      lifterId: `lifter-${person.id}`,
      takenOn: dayFrom(today, -2 - DAYS_BETWEEN_WEIGHINGS * (count - 1 - index) - (personIndex % 4)),
      massKg: Number(massKg.toFixed(1)),
    };
  });
}
