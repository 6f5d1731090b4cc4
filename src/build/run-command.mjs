/** Runs one command of the project's own tools, without input, and keeps what it says. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';

/** No single step may take longer; a hanging one is ended and has failed. */
const LIMIT_MS = 15 * 60_000;

/**
 * Runs a tool from node_modules/.bin (or `node`) in the project's folder.
 * Resolves to its exit code, all that it printed, and the ms it took; never rejects.
 */
export function runCommand(root, [tool, ...args], env = {}) {
  const started = performance.now();
  const command = tool === 'node' ? process.execPath : join(root, 'node_modules/.bin', tool);
  return new Promise((resolve) => {
    let log = '';
    const child = spawn(command, args, {
      cwd: root,
      stdio: ['ignore', 'pipe', 'pipe'],
      timeout: LIMIT_MS,
      shell: process.platform === 'win32',
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined, ...env },
    });
    const keep = (chunk) => {
      log += chunk;
    };
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    const end = (exitCode) => resolve({ exitCode, log, ms: performance.now() - started });
    child.on('error', (error) => {
      log += String(error);
      end(1);
    });
    child.on('close', (code) => end(code ?? 1));
  });
}
