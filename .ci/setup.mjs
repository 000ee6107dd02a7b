// Prepares a checkout for the other commands, using nothing but Node: the right Node, the locked packages and, with
// --browser, a browser of the Chromium family. Does nothing when everything is there.
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './find-browser.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const [major, minor] = process.versions.node.split('.').map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  stop(`Underlid needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer Node and try again.`);
}

installPackages();
if (process.argv.includes('--browser')) installBrowser();

function installPackages() {
  const hash = createHash('sha256');
  for (const name of ['package.json', 'package-lock.json']) hash.update(readFileSync(join(root, name)));
  const wanted = `${hash.digest('hex')} ${process.platform} ${process.arch} node${major}`;
  const stamp = join(root, 'node_modules', '.underlid-stamp');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  console.log('Installing the locked packages (npm ci) …');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const done = spawnSync(npm, ['ci', '--include=dev', '--ignore-scripts'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) stop('npm ci failed: see the lines above.');
  writeFileSync(stamp, wanted);
}

function installBrowser() {
  if (findBrowser()) return;
  const debian = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (!debian) {
    stop('The browser tests need Chromium, Chrome or Edge. Install one, or set CHROME_PATH to its executable.');
  }
  console.log('Installing Debian’s chromium …');
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env: environment });
  execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: environment,
  });
  if (!findBrowser()) stop('chromium was installed but cannot be found. Set CHROME_PATH to its executable.');
}

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}
