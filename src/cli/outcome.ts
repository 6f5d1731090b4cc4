/** What a command came to. Only `main.ts` prints and ends the process. */
export interface Outcome {
  /** For stdout; a last line break is added where there is none. */
  readonly output: string;
  /** A sentence for stderr; empty where there is nothing to say. */
  readonly problem: string;
  /** 0 all well, 1 something broken or missing, 2 the input could not be read. */
  readonly exitCode: 0 | 1 | 2;
}

/** An answer on stdout. */
export function answered(output: string, exitCode: 0 | 1 = 0): Outcome {
  return { output, problem: '', exitCode };
}

/** Input that could not be read, with the sentence that says why. */
export function refused(problem: string): Outcome {
  return { output: '', problem, exitCode: 2 };
}
