/** Makes sure the browser tests have a Chromium: installs Debian's own package when we are root and may do so. */
import { spawnSync } from 'node:child_process';
import { CHROMIUM_CURE, findChromium, programOnPath } from './find-chromium.mjs';

function installOnDebian() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || programOnPath('apt-get') === undefined) return;
  console.error('Installing Chromium for the browser tests.');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const step of [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium'],
  ]) {
    // what apt-get says goes to standard error; its success is judged by looking for Chromium again
    spawnSync('apt-get', step, { env, stdio: ['ignore', 2, 2] });
  }
}

try {
  if (findChromium() === undefined) installOnDebian();
  if (findChromium() === undefined) throw new Error(`no Chromium found for the browser tests: ${CHROMIUM_CURE}`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
