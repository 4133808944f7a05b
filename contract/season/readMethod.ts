import { beyondBounds } from '#contract/json/beyondBounds.ts';
import { type Method, method } from '#contract/records/method.ts';
import { capital } from '#contract/words/capital.ts';
import { issueProblem, valueAt } from '#contract/words/shapeProblem.ts';
import { methodPlace } from './methodPlaces.ts';

/** A wrong place of a method, as a file has it, and what is wrong there in a coach's words. */
export interface MethodProblem {
  place: string;
  message: string;
  /** The same without the place: "is 9; it must be at most 7." */
  said: string;
}

/** A method from the text of a file, or everything that is wrong with it. */
export function readMethod(text: string): { method: Method } | { problems: MethodProblem[] } {
  const beyond = beyondBounds(text);
  if (beyond !== null) return { problems: [ofWhole(`The file ${beyond}.`)] };
  try {
    return judgedMethod(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { problems: [ofWhole(`The file is not JSON: ${error.message}.`)] };
  }
}

/** The same for a document that is already there, as somebody changes it. */
export function judgedMethod(document: unknown): { method: Method } | { problems: MethodProblem[] } {
  const read = method.safeParse(document);
  if (read.success) return { method: read.data };
  return {
    problems: read.error.issues.map((issue) => {
      const { field, message } = issueProblem(issue, document);
      if (field === '') return ofWhole(message);
      const isEmpty = issue.code === 'too_small' && valueAt(document, issue.path) === '';
      const said = isEmpty ? 'is needed.' : message.slice(field.length + 1);
      return {
        place: field,
        message: `${capital(methodPlace(document, issue.path)) || field} ${said}`,
        said,
      };
    }),
  };
}

/** A problem of no place in particular. */
export function ofWhole(message: string): MethodProblem {
  return { place: 'the whole', message, said: message };
}
