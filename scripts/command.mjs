import { spawn } from 'node:child_process';

/**
 * Runs a tool that is installed in node_modules/.bin (or on the PATH) and collects what it prints.
 * @returns {Promise<{ status: number, stdout: string, output: string }>} output: both streams as they came
 */
export function runCommand(command, args, { cwd = process.cwd(), env = {}, echo = false } = {}) {
  const bin = `${process.cwd()}/node_modules/.bin`;
  const separator = process.platform === 'win32' ? ';' : ':';
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env, PATH: `${bin}${separator}${process.env.PATH}` },
      shell: process.platform === 'win32',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let stdout = '';
    let output = '';
    child.stdout.on('data', (chunk) => {
      stdout += chunk;
      output += chunk;
      if (echo) process.stdout.write(chunk);
    });
    child.stderr.on('data', (chunk) => {
      output += chunk;
      if (echo) process.stderr.write(chunk);
    });
    child.on('error', (error) => resolve({ status: 1, stdout, output: `${command}: ${error.message}` }));
    child.on('close', (status) => resolve({ status: status ?? 1, stdout, output }));
  });
}
