import { type Browser, chromium } from 'playwright-core';
import { CHROMIUM_CURE, findChromium } from './find-chromium.mjs';

/**
 * Starts the machine's Chromium without a window. It draws WebGL in software, so that a machine without a graphics
 * card shows the same page, and runs without its sandbox, which it refuses to start as root. The caller closes it.
 */
export async function launch(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error(`no Chromium found: ${CHROMIUM_CURE}`);
  return chromium.launch({
    executablePath,
    headless: true,
    chromiumSandbox: false,
    args: ['--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--disable-quic'],
  });
}
