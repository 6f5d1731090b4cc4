/**
 * Where a Chromium is on this machine: an installed one without a window first, then a whole Chromium, Chrome or Edge, else
 * Playwright's own. Node built-ins only. All who ask are headless, and a whole browser makes a page at twice the cost: it
 * draws its own bars into memory for each.
 */
import { accessSync, constants, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';

const NAMES = [
  'chromium-headless-shell',
  'chrome-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
  'msedge',
];

const MAC = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const WINDOWS = ['Chromium\\Application\\chrome.exe', 'Google\\Chrome\\Application\\chrome.exe'].concat(
  'Microsoft\\Edge\\Application\\msedge.exe',
);

function runnable(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function onPath() {
  const ending = process.platform === 'win32' ? '.exe' : '';
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name + ending)));
}

function inProgramFolders() {
  if (process.platform === 'darwin') return MAC;
  if (process.platform !== 'win32') return [];
  const folders = [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA];
  return folders.filter(Boolean).flatMap((folder) => WINDOWS.map((program) => join(folder, program)));
}

/** The browser that Playwright downloaded for itself, if it did. */
function playwrightsOwn() {
  try {
    const path = createRequire(import.meta.url)('@playwright/test').chromium.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined;
  }
}

/** The path of a Chromium, or undefined. HANDFUL_BROWSER names one by hand. */
export function findBrowser() {
  const named = process.env.HANDFUL_BROWSER;
  if (named) return named;
  return [...onPath(), ...inProgramFolders()].find(runnable) ?? playwrightsOwn();
}
