import { accidentsCommand } from './commands/accidents.ts';
import { checkCommand } from './commands/check.ts';
import { diffCommand } from './commands/diff.ts';
import { playCommand } from './commands/play.ts';
import { routeCommand } from './commands/route.ts';
import { sheetCommand } from './commands/sheet.ts';
import { suggestCommand } from './commands/suggest.ts';
import { worksheetCommand } from './commands/worksheet.ts';
import { type Outcome, refused } from './outcome.ts';
import { USAGE } from './usage.ts';

const COMMANDS: Readonly<Record<string, (args: readonly string[]) => Outcome>> = {
  check: checkCommand,
  route: routeCommand,
  play: playCommand,
  worksheet: worksheetCommand,
  sheet: sheetCommand,
  accidents: accidentsCommand,
  suggest: suggestCommand,
  diff: diffCommand,
};

function run([verb, ...rest]: readonly string[]): Outcome {
  if (verb === 'help' || [verb, ...rest].some(isHelp)) return { output: USAGE, problem: '', exitCode: 0 };
  const command = verb !== undefined && Object.hasOwn(COMMANDS, verb) ? COMMANDS[verb] : undefined;
  if (command === undefined) {
    return refused(`${verb === undefined ? 'No command.' : `Unknown command ${verb}.`}\n\n${USAGE}`);
  }
  try {
    return command(rest);
  } catch (error) {
    if (isWrongArgument(error)) return refused(`${error.message}\n\n${USAGE}`);
    throw error;
  }
}

/** Asked for anywhere, so that a verb's own `--help` answers too. */
function isHelp(word: string | undefined): boolean {
  return word === '--help' || word === '-h';
}

/** What `parseArgs` throws for an option that it does not know or that lacks its value. */
function isWrongArgument(error: unknown): error is Error {
  return (
    error instanceof Error &&
    'code' in error &&
    typeof error.code === 'string' &&
    error.code.startsWith('ERR_PARSE_ARGS')
  );
}

// A reader that stops early (`| head`) is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const { output, problem, exitCode } = run(process.argv.slice(2));
if (output !== '') process.stdout.write(output.endsWith('\n') ? output : `${output}\n`);
if (problem !== '') process.stderr.write(`${problem}\n`);
// Not process.exit: what is still on its way into a pipe would be lost.
process.exitCode = exitCode;
