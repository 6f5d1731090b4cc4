import { createStore, type StoreApi } from 'zustand/vanilla';

/** The answer to the latest question, as far as there is one. */
export interface Latest<Question, Answer> {
  /** What was asked last. */
  readonly asked: Question | null;
  /** The newest answer there is, and to which question; it may be to an earlier one than the last. */
  readonly answer: { readonly to: Question; readonly value: Answer } | null;
  /** Why there is none, in a sentence. */
  readonly failed: string | null;
  /** Asks; while an answer is awaited only the newest question waits, all between are dropped. */
  ask(question: Question): void;
}

/**
 * Questions that are answered elsewhere and may come faster than answers. `isSame` says that two questions need no two
 * answers.
 */
export function makeLatest<Question, Answer>(
  answer: (question: Question) => Promise<Answer>,
  isSame: (one: Question, other: Question) => boolean = Object.is,
): StoreApi<Latest<Question, Answer>> {
  let isBusy = false;
  return createStore<Latest<Question, Answer>>((set, get) => {
    const work = async (question: Question): Promise<void> => {
      isBusy = true;
      try {
        const value = await answer(question);
        set({ answer: { to: question, value }, failed: null });
      } catch (error) {
        set({ failed: error instanceof Error ? error.message : String(error) });
      }
      isBusy = false;
      const { asked } = get();
      if (asked !== null && !isSame(asked, question)) await work(asked);
    };
    return {
      asked: null,
      answer: null,
      failed: null,
      ask: (question) => {
        const { asked } = get();
        if (asked !== null && isSame(asked, question)) return;
        set({ asked: question });
        if (!isBusy) void work(question);
      },
    };
  });
}
