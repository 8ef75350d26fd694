/**
 * Finds a Chromium for the browser tests. In order: the one named by CHROMIUM_PATH, one on the PATH, one that
 * Playwright has downloaded.
 */
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

const SYSTEM_NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** What to do when there is none. */
export const CHROMIUM_CURE = 'install Chromium (on Debian: apt-get install chromium) or set CHROMIUM_PATH to one';

/**
 * The path of a Chromium, or undefined when the machine has none. A wrong CHROMIUM_PATH is an error, not a miss.
 * @returns {string | undefined}
 */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (!isProgram(named)) throw new Error(`CHROMIUM_PATH is ${named}, which is not a program: ${CHROMIUM_CURE}`);
    return named;
  }
  return SYSTEM_NAMES.map(programOnPath).find((file) => file !== undefined) ?? playwrightsOwn();
}

/**
 * The full path of a program on the PATH.
 * @param {string} name
 * @returns {string | undefined}
 */
export function programOnPath(name) {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name)).find(isProgram);
}

function playwrightsOwn() {
  try {
    const file = chromium.executablePath();
    return isProgram(file) ? file : undefined;
  } catch {
    // playwright-core names no path on a platform it does not know
    return undefined;
  }
}

/** @param {string} file */
function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}
