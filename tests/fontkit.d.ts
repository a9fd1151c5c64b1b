/** What the tests use of fontkit, which ships no types. */
declare module "fontkit" {
  export interface Font {
    readonly unitsPerEm: number;
    readonly capHeight: number;
    glyphForCodePoint(codePoint: number): { readonly advanceWidth: number };
    layout(text: string, features: readonly string[]): { readonly advanceWidth: number };
  }
  export function openSync(path: string): Font;
}
