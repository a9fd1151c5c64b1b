import type { Count } from "../plane/types.ts";
import type { LinedFault } from "./read-tree.ts";
import type { TextPart } from "./types.ts";

export interface SplitText {
  readonly parts: readonly TextPart[];
  readonly faults: readonly LinedFault[];
}

/** A part still being gathered. `head` is null for plain prose. */
interface Gathering {
  readonly head: BoxHead | null;
  readonly headLine: Count;
  readonly lines: string[];
  line: Count;
}

type BoxHead =
  | { readonly kind: "caution" | "tip" }
  | { readonly kind: "step"; readonly step: string }
  | { readonly kind: "before"; readonly step: string; readonly title: string };

const field = "text";
const figureLine = /^ {0,3}!\[([^\]]*)\]\(figure:([^)\s]*)\)\s*$/;
const figureName = /^[a-z]+(\/[A-Za-z0-9+-]+)*$/;
const boxes = "caution, tip, step <id> or before <id> <title>";

/** Cut the author's Markdown up at figures and boxes. Boxes stand on their own: none inside another. */
export function splitText(body: string, firstLine: Count): SplitText {
  const parts: TextPart[] = [];
  const faults: LinedFault[] = [];
  const refuse = (line: Count, fault: string, fix: string) =>
    void faults.push({ line, field, fault, fix });
  const start = (head: BoxHead | null, line: Count): Gathering => {
    return { head, headLine: line, lines: [], line };
  };
  let now = start(null, firstLine);
  let fence: string | null = null;
  const finish = () => parts.push(...finishPart(now, refuse));

  body.split("\n").forEach((text, index) => {
    const line = firstLine + index;
    const [, mark] = /^ {0,3}(```+|~~~+)/.exec(text) ?? [];
    // Inside a block of code nothing is a box or a figure.
    if (fence !== null) {
      if (mark !== undefined && text.trim() === mark && mark.startsWith(fence)) fence = null;
      gather(now, text, line);
      return;
    }
    if (mark !== undefined) fence = mark;
    const box = /^ {0,3}:::+(.*)$/.exec(text)?.[1]?.trim();
    const figure = figureLine.exec(text);
    if (box === undefined && figure === null) {
      gather(now, text, line);
      return;
    }
    if (box === "") {
      if (now.head === null) refuse(line, "closes a box that was not opened", "Take ::: out");
      finish();
      now = start(null, line + 1);
      return;
    }
    if (now.head !== null) {
      const what = figure === null ? "a box opens" : "a figure stands";
      refuse(
        line,
        `${what} inside the box of line ${now.headLine}`,
        "Close that box first with :::",
      );
      // A figure inside a box is passed over; a box ends the one before it.
      if (figure !== null) return;
    }
    finish();
    if (figure !== null) {
      const [, caption = "", name = ""] = figure;
      if (!figureName.test(name)) {
        refuse(
          line,
          `figure:${name} is not the name of a figure`,
          "Write figure:blocks or figure:solid/pad",
        );
      }
      if (caption.trim() === "")
        refuse(line, "a figure has no caption", "Write ![words](figure:…)");
      parts.push({ kind: "figure", figure: name, caption: caption.trim(), line });
      now = start(null, line + 1);
      return;
    }
    now = start(readHead(box ?? "", line, refuse), line);
    now.line = line + 1;
  });
  if (now.head !== null) {
    refuse(now.headLine, "the box is not closed", "Put ::: on a line of its own after it");
  }
  finish();
  return { parts, faults };
}

type Refuse = (line: Count, fault: string, fix: string) => void;

function gather(now: Gathering, text: string, line: Count): void {
  if (now.lines.length === 0) {
    if (text.trim() === "") return;
    now.line = line;
  }
  now.lines.push(text);
}

function finishPart(
  { head, headLine, lines, line }: Gathering,
  refuse: Refuse,
): readonly TextPart[] {
  const markdown = lines.join("\n").trimEnd();
  if (head === null) return markdown === "" ? [] : [{ kind: "prose", markdown, line }];
  if (markdown === "") {
    refuse(headLine, "the box is empty", "Write something in it, or take it out");
    return [];
  }
  return [{ ...head, markdown, line }];
}

function readHead(box: string, line: Count, refuse: Refuse): BoxHead {
  const [word = "", step = "", ...rest] = box.split(/\s+/);
  const title = rest.join(" ");
  const isId = /^[a-z0-9]+(-[a-z0-9]+)*$/.test(step);
  switch (word) {
    case "caution":
    case "tip":
      if (step !== "")
        refuse(line, `::: ${word} takes no words after it`, "Put them on the next line");
      return { kind: word };
    case "step":
      if (!isId || title !== "") {
        refuse(line, "::: step needs the id of one step", "Write ::: step cut-foam");
      }
      return { kind: "step", step };
    case "before":
      if (!isId || title === "") {
        const fix = "Write ::: before cut-foam Let the foam rest";
        refuse(line, "::: before needs the id of a step and a title", fix);
      }
      return { kind: "before", step, title };
    default:
      refuse(line, `::: ${word} is not a box that is known`, `Write ::: and ${boxes}`);
      return { kind: "tip" };
  }
}
