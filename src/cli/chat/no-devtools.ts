/** Stands in for ink's optional development tools when the chat is bundled: they are never started. */
export default { initialize() {}, connectToDevTools() {} };
