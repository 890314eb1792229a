export type * from "./answer.ts";
export * from "./later.ts";
export type * from "./paper.ts";
export type * from "./reading.ts";
export type * from "./record.ts";
export * from "./tool.ts";
