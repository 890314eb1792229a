import { useStdout } from "ink";
import { useEffect, useState } from "react";

/** The window's size in cells, kept current. */
export function useSize(): { columns: number; rows: number } {
  const { stdout } = useStdout();
  const read = () => ({ columns: stdout.columns || 80, rows: stdout.rows || 24 });
  const [size, setSize] = useState(read);
  useEffect(() => {
    const changed = () => setSize(read());
    stdout.on("resize", changed);
    return () => {
      stdout.off("resize", changed);
    };
  });
  return size;
}
