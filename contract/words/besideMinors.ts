/** What is said wherever heavy work or bands meet somebody under age. */
export const besideMinors =
  'a qualified coach decides and stays beside the lifter; local rules for minors come first.';
