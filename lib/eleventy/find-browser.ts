import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = [
  "google-chrome-stable",
  "google-chrome",
  "chromium",
  "chromium-browser",
  "microsoft-edge-stable",
  "microsoft-edge",
];

const applications = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ...["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((variable) => {
    const folder = process.env[variable];
    return folder === undefined
      ? []
      : [
          join(folder, "Google/Chrome/Application/chrome.exe"),
          join(folder, "Microsoft/Edge/Application/msedge.exe"),
        ];
  }),
];

/** Path of an installed Chrome, Edge or Chromium, CHROME_PATH first; null where there is none. */
export function findBrowser(): string | null {
  const own = process.env["CHROME_PATH"];
  if (own !== undefined && existsSync(own)) return own;
  const folders = [
    ...(process.env["PATH"] ?? "").split(delimiter),
    "/usr/bin",
    "/opt/google/chrome",
    "/snap/bin",
  ];
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...applications].find((path) => existsSync(path)) ?? null;
}

export const browserHelp =
  "No Chrome, Edge or Chromium was found. Install one (Debian: apt-get install chromium), or set CHROME_PATH; " +
  "or open print/index.html in any browser and print it from there.";
