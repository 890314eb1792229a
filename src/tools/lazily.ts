/** A calculator whose file runs only when something of it but its name is looked at: the build makes the registry so. */
import type { Tool } from "./contract/index.ts";

export function lazily(name: string, load: () => Tool): Tool {
  let loaded: Tool | undefined;
  const get = () => (loaded ??= load());
  return {
    name,
    get purpose() {
      return get().purpose;
    },
    get inputs() {
      return get().inputs;
    },
    get cues() {
      return get().cues;
    },
    get goesOn() {
      return get().goesOn ?? [];
    },
    get after() {
      return get().after ?? {};
    },
    get examples() {
      return get().examples;
    },
    get elsewhere() {
      return get().elsewhere;
    },
    get rivals() {
      return get().rivals ?? [];
    },
    get unboxes() {
      return get().unboxes;
    },
    get shifts() {
      return get().shifts;
    },
    get alone() {
      return get().alone;
    },
    get sum() {
      return get().sum;
    },
    read: (reading, memory) => get().read(reading, memory),
    compute: (inputs, world) => get().compute(inputs, world),
  };
}
