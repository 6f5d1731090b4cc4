import { expose } from 'comlink';
import { AccidentJudge } from './accident-judge.ts';

expose(new AccidentJudge());
