import { useMemo, useState } from "react";

/** How long an answer may take before a word is said about it. */
const patience_ms = 500;

export interface Waiting {
  /** An answer has been on its way for longer than that. */
  long: boolean;
  /** Runs the work and watches it. */
  during<T>(work: () => Promise<T>): Promise<T>;
}

/** Tells when an answer takes long: another window writes to the record, or a disk is slow. */
export function useWaiting(): Waiting {
  const [long, setLong] = useState(false);
  const during = useMemo(
    () =>
      async <T>(work: () => Promise<T>): Promise<T> => {
        const timeout = setTimeout(() => setLong(true), patience_ms);
        try {
          return await work();
        } finally {
          clearTimeout(timeout);
          setLong(false);
        }
      },
    [],
  );
  return { long, during };
}
