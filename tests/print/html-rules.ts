import { HtmlValidate } from "html-validate";

const validator = new HtmlValidate({
  extends: ["html-validate:recommended"],
  rules: {
    "no-trailing-whitespace": "off",
    "no-inline-style": "off",
    "long-title": "off",
    "require-sri": "off",
    "doctype-style": "off",
  },
});

/** What is wrong with a page of HTML, a line each. */
export async function htmlFaults(html: string): Promise<readonly string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line}: ${ruleId}: ${message}`),
  );
}
