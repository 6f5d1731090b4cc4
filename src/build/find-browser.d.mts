/** The path of a Chromium on this machine, or undefined. */
export function findBrowser(): string | undefined;
