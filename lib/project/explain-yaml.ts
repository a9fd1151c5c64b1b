import type { ErrorCode } from "yaml";

interface Explained {
  readonly fault: string;
  readonly fix: string;
}

const brackets = "Count the brackets and braces, and put quotes around words that hold one";

/** Plain words for the faults of YAML that authors meet most. */
const known: Partial<Record<ErrorCode, Explained>> = {
  DUPLICATE_KEY: { fault: "a key is given twice", fix: "Take one of the two lines out" },
  TAB_AS_INDENT: { fault: "a line is set in with a tab", fix: "Use spaces" },
  BAD_INDENT: {
    fault: "a line is set in by the wrong amount, or a bracket is not closed",
    fix: "Set it in like its neighbours, and close every bracket",
  },
  BLOCK_AS_IMPLICIT_KEY: {
    fault: "a value holds a colon followed by a gap",
    fix: "Put quotes around the value",
  },
  MISSING_CHAR: { fault: "a bracket, comma, colon or quote is missing", fix: brackets },
  UNEXPECTED_TOKEN: { fault: "something stands where it cannot be read", fix: brackets },
  BAD_SCALAR_START: {
    fault: "a value starts with a sign that needs quotes",
    fix: "Put quotes around the value",
  },
  MULTIPLE_DOCS: { fault: "there is more than one document", fix: "Keep one front matter" },
  MULTILINE_IMPLICIT_KEY: {
    fault: "a key runs over several lines, or a colon is missing",
    fix: "Write key: value on one line",
  },
};

/** Say what is wrong with broken YAML, in plain words where the fault is a common one. */
export function explainYaml(code: ErrorCode, message: string): Explained {
  const [first = message] = message.split("\n");
  return known[code] ?? { fault: first.replace(/\.$/, "").toLowerCase(), fix: brackets };
}
