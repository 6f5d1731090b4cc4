import { type KeyRenaming, renamed } from '../board/key-renaming.ts';
import type { Diagnosis, Fault } from './fault.ts';
import type { Session } from './session.ts';
import type { KnownRoute } from './session-log.ts';
import { renamedSignature } from './ways.ts';

/** A session after keys of the board were given other ids. */
export function renamedSession(session: Session, renaming: KeyRenaming): Session {
  const { routes, attempts, slip } = session;
  return {
    ...session,
    routes: Object.fromEntries(
      Object.entries(routes).map(([need, route]) => [need, renamedRoute(route, renaming)]),
    ),
    attempts: attempts.map((attempt) => ({
      ...attempt,
      diagnosis: renamedDiagnosis(attempt.diagnosis, renaming),
    })),
    slip: renamedDiagnosis(slip, renaming),
  };
}

function renamedRoute({ signature, words, keys }: KnownRoute, renaming: KeyRenaming): KnownRoute {
  const to = keys.map((key) => renamed(renaming, key));
  return { signature: renamedSignature(signature, renaming), words, keys: to };
}

function renamedDiagnosis(diagnosis: Diagnosis | null, renaming: KeyRenaming): Diagnosis | null {
  if (diagnosis === null) return null;
  return { ...diagnosis, faults: diagnosis.faults.map((fault) => renamedFault(fault, renaming)) };
}

function renamedFault(fault: Fault, renaming: KeyRenaming): Fault {
  const to = (key: string) => renamed(renaming, key);
  if ('missing' in fault) return { ...fault, missing: fault.missing.map(to) };
  if ('meant' in fault) return { ...fault, key: to(fault.key), meant: to(fault.meant) };
  return 'key' in fault ? { ...fault, key: to(fault.key) } : fault;
}
