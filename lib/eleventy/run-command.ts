/** Run a command: its number is the exit code; an error is one line, with the trace under DEBUG. */
export async function runCommand(command: () => Promise<number>): Promise<void> {
  try {
    process.exitCode = await command();
  } catch (error) {
    console.error(process.env["DEBUG"] === undefined ? firstCause(error) : error);
    process.exitCode = 1;
  }
}

/** The message furthest down, where the reason is. */
function firstCause(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const inner = "originalError" in error ? error.originalError : error.cause;
  return inner instanceof Error ? firstCause(inner) : error.message;
}
