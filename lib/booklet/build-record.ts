import type { Format } from "../units/make-format.ts";
import { openHyphens } from "./open-hyphens.ts";
import type { Fact, RecordPage } from "./pages.ts";
import { figures as numbers, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** The page for the archive: sizes as planned beside sizes as made, to fill in or already filled. */
export function buildRecord({ project, solids }: Plan, format: Format): RecordPage {
  const measured = project.made?.measured ?? {};
  const planned = [
    ...Object.entries(project.dimensions).map(([name, size]) => ({
      name,
      label: openHyphens(name),
      size,
    })),
    // A size of the author's may bear the same name, and be another: "seat depth", to sit on.
    ...solids.flatMap(({ id, size }) =>
      (["length", "depth", "height"] as const).map((axis, i) => ({
        name: `${id} ${axis}`,
        label: `${openHyphens(id)}, overall ${axis}`,
        size: size[i]!,
      })),
    ),
  ];
  const extra = Object.keys(measured).filter(
    (name) => !planned.some((known) => known.name === name),
  );
  const made = (name: string): string => {
    const size = measured[name];
    return size === undefined ? "" : format.length(size);
  };
  return {
    kind: "record",
    id: "record",
    title: "Record",
    notes: project.made?.notes ?? null,
    photo: project.made?.photo ?? null,
    sizes: tableOrNull("record-sizes", "Sizes as planned and as made", {
      columns: [words("Size"), numbers("Planned"), numbers("As made")],
      rows: [
        ...planned.map(({ name, label, size }) => [label, format.length(size), made(name)]),
        ...extra.map((name) => [openHyphens(name), "", made(name)]),
      ],
    }),
    facts: [
      fact("Made on", project.made?.date ?? null),
      fact("Made by", null),
      fact("Changes made", null),
    ],
  };
}

/** An empty value prints as a line to write on. */
const fact = (label: string, value: string | null): Fact => ({ label, value: value ?? "" });
