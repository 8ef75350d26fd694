/**
 * Installs the packages of package-lock.json when they are missing or not the ones it names.
 *
 * npm writes what it has installed to node_modules/.package-lock.json. The lock also lists packages for other
 * platforms, which are not installed here: those are marked optional, and only they may be absent.
 *
 * @typedef {{ version?: string, integrity?: string, optional?: boolean }} LockEntry
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));

const reason = staleness();
if (reason !== undefined) {
  console.error(`Installing packages: ${reason}.`);
  // development packages too, even where NODE_ENV says production: they build and test
  const npm = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
  });
  if (npm.error) console.error(`npm could not be started: ${npm.error.message}`);
  process.exitCode = npm.status ?? 1;
}

/** Why node_modules does not match the lock, or undefined when it does. */
function staleness() {
  const wanted = packagesIn(`${root}package-lock.json`);
  const installed = packagesIn(`${root}node_modules/.package-lock.json`);
  if (wanted === undefined) throw new Error('package-lock.json is missing: restore it from version control');
  if (installed === undefined) return 'there are none yet';

  for (const [folder, entry] of wanted) {
    const found = installed.get(folder);
    if (found === undefined) {
      if (entry.optional !== true) return `${folder} is missing`;
    } else if (found.version !== entry.version || found.integrity !== entry.integrity) {
      return `${folder} is ${found.version}, the lock names ${entry.version}`;
    }
  }
  for (const folder of installed.keys()) {
    if (!wanted.has(folder)) return `${folder} is installed but not in the lock`;
  }
  return undefined;
}

/**
 * The packages a lock file lists, by folder; the project itself ('') left out.
 * @param {string} file
 * @returns {Map<string, LockEntry> | undefined}
 */
function packagesIn(file) {
  if (!existsSync(file)) return undefined;
  const { packages } = JSON.parse(readFileSync(file, 'utf8'));
  return new Map(Object.entries(packages).filter(([folder]) => folder !== ''));
}
