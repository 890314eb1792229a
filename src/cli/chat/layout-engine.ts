/**
 * Stands in for ink's layout engine where the chat is bundled. The engine itself is awaited while its module is read,
 * which a part of the program can't be: here reading begins at once, and the chat waits before it draws.
 */
import { loadYoga } from "yoga-layout/load";

const engine = {};

/** Resolves when ink can lay out. */
export const laidOut: Promise<unknown> = loadYoga().then((loaded) => Object.assign(engine, loaded));

export default engine;
