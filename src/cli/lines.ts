/** Lines of a stream, ended by LF or CRLF and nothing else; the last one may lack its end. */
export async function* linesOf(stream: AsyncIterable<string | Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let rest = "";
  for await (const chunk of stream) {
    rest += typeof chunk === "string" ? chunk : decoder.decode(chunk, { stream: true });
    const parts = rest.split("\n");
    rest = parts.pop() ?? "";
    for (const part of parts) yield part.endsWith("\r") ? part.slice(0, -1) : part;
  }
  rest += decoder.decode();
  if (rest !== "") yield rest.endsWith("\r") ? rest.slice(0, -1) : rest;
}
