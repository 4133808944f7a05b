/** What is said with every plan for a comparison of two ways, and where people are trained by lot at all. */
export const comparisonCautions: readonly string[] = [
  'Nobody should be put on a harder way for the sake of a comparison: take only two ways that you would give to each of these lifters anyway.',
  'Ask everybody first, without pressure. Anybody may say no, and leave at any time without a reason and without a disadvantage.',
  'Your judgement comes first: change, lighten or stop what anybody does as you would without a comparison. They still count by the way drawn.',
  'Minors are never drawn, nor is anybody whose date of birth is not known.',
  'Where your club, federation or country has rules for trials on people, those come before this page.',
];
