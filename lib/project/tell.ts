/** What a value should have been and how to mend it, packed into one text for the schema. */
export interface Told {
  readonly expected: string;
  readonly fix: string;
}

const gap = "\n"; // never inside either half

/** Give a schema its words. The schema library carries one text; `untell` parts it again. */
export function tell(expected: string, fix: string): { readonly error: () => string } {
  return { error: () => `${expected}${gap}${fix}` };
}

/** Part a packed text. One that was never packed is used for both halves. */
export function untell(message: string): Told {
  const [expected = message, fix = "Compare with the description of the project file"] =
    message.split(gap);
  return { expected, fix };
}
