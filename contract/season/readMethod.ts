import { beyondBounds } from '#contract/json/beyondBounds.ts';
import { type Method, method } from '#contract/records/method.ts';
import { capital } from '#contract/words/capital.ts';
import { issueProblem } from '#contract/words/shapeProblem.ts';
import { methodPlace } from './methodPlaces.ts';

/** A wrong place of a method, as a file has it, and what is wrong there in a coach's words. */
export interface MethodProblem {
  place: string;
  message: string;
}

/** A method from the text of a file, or everything that is wrong with it. */
export function readMethod(text: string): { method: Method } | { problems: MethodProblem[] } {
  const beyond = beyondBounds(text);
  if (beyond !== null) return { problems: [{ place: whole, message: `The file ${beyond}.` }] };
  try {
    return judgedMethod(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { problems: [{ place: whole, message: `The file is not JSON: ${error.message}.` }] };
  }
}

/** The same for a document that is already there, as somebody changes it. */
export function judgedMethod(document: unknown): { method: Method } | { problems: MethodProblem[] } {
  const read = method.safeParse(document);
  if (read.success) return { method: read.data };
  return {
    problems: read.error.issues.map((issue) => {
      const { field, message } = issueProblem(issue, document);
      if (field === '') return { place: whole, message };
      return {
        place: field,
        message: message.replace(field, capital(methodPlace(document, issue.path)) || field),
      };
    }),
  };
}

const whole = 'the whole';
