/** The part of Eleventy 3.1 that is used here; the package ships no types of its own. */
declare module "@11ty/eleventy" {
  export interface UserConfig {
    readonly ignores: Set<string>;
    /** Clocks that report what took long; a threshold of 0 keeps them quiet. */
    readonly benchmarks: Readonly<Record<string, { setMinimumThresholdMs(least: number): void }>>;
    /** What a command hands to .eleventy.js. */
    slipcase?: unknown;
    setUseGitIgnore(use: boolean): void;
    setDataFileSuffixes(suffixes: readonly string[]): void;
    setNunjucksEnvironmentOptions(options: object): void;
    setFrontMatterParsingOptions(options: object): void;
    setQuietMode(isQuiet: boolean): void;
    amendLibrary(name: string, amend: (library: never) => void): void;
    addGlobalData(name: string, data: unknown): void;
    addPreprocessor(
      name: string,
      formats: string,
      run: (data: never, content: string) => string | false,
    ): void;
    addFilter(name: string, filter: (this: FilterContext, ...values: never[]) => unknown): void;
    addTemplate(path: string, content: string, data: object): void;
    on(
      event: "eleventy.after",
      run: (done: { readonly directories: { readonly output: string } }) => void,
    ): void;
    addWatchTarget(target: string, options: { readonly resetConfig: boolean }): void;
  }

  export interface FilterContext {
    readonly ctx: Readonly<Record<string, unknown>>;
  }

  export interface EleventyOptions {
    readonly configPath?: string;
    readonly quietMode?: boolean;
    readonly runMode?: "build" | "serve" | "watch";
    readonly config?: (config: UserConfig) => void;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options: EleventyOptions);
    disableLogger(): void;
    init(): Promise<void>;
    write(): Promise<unknown>;
    watch(): Promise<void>;
    serve(port?: number): Promise<void>;
  }
}
