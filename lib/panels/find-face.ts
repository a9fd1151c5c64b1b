import type { Face, Solid } from "../solids/types.ts";

/** Faces that answer to a name: several where a side shows in several places, none where it is glued. */
export const facesNamed = (solid: Pick<Solid, "faces">, name: string): readonly Face[] => {
  const exact = solid.faces.filter(({ id }) => id === name && id.includes("#"));
  return exact.length > 0 ? exact : solid.faces.filter(({ names }) => names.includes(name));
};
