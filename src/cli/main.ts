import { EXIT, systemWords } from './exit.ts';
import { run } from './run.ts';

// a reader that has seen enough, as in `floatwright check … | head`, is no fault of ours
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code === 'EPIPE') process.exit();
  process.stderr.write(`standard output: cannot be written: ${systemWords(fault)}\n`);
  process.exit(EXIT.refused);
});
process.stderr.on('error', () => process.exit(EXIT.refused));

// set, not exit(): what is still on its way to a pipe must arrive
process.exitCode = await run(process.argv.slice(2), {
  input: process.stdin,
  print: (text) => process.stdout.write(text),
  complain: (line) => process.stderr.write(`${line}\n`),
});
