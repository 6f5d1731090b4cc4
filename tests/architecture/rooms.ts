/** One room of the house: a folder of src, and whose doors it may use. */
export interface Room {
  /** Folder below src. */
  readonly room: string;
  readonly holds: string;
  /** Rooms below src that it may import, itself aside. A room named with `/*` stands for all rooms below it. */
  readonly mayImport: readonly string[];
  /** Packages that it may import; `null` leaves it free. */
  readonly packages: readonly string[] | null;
  /** What to do instead of an import that is not allowed. */
  readonly instead: string;
}

const PURE = ['zod', 'immer', 'd3-array', 'd3-random', 'munkres', 'polygon-clipping'];

const DOWN =
  'Move what both need to a room that stands above them in this table, or hand it in as an argument.';

function coreRoom(room: string, holds: string, mayImport: readonly string[], instead = DOWN): Room {
  return {
    room: `core/${room}`,
    holds,
    mayImport: mayImport.map((name) => `core/${name}`),
    packages: PURE,
    instead,
  };
}

const MODEL = ['base', 'keymap'];
const GROUND = [...MODEL, 'board', 'host'];
const MIDDLE = [...GROUND, 'engine', 'routes', 'needs'];
const JUDGING = [...MIDDLE, 'typist', 'findings', 'coverage'];
const SHOWING = [...JUDGING, 'rehearse', 'versions', 'link', 'drawing'];
const ALL_CORE = [...SHOWING, 'effort', 'arrange', 'practice', 'check'];

/** Who may import whom, from the ground up. A folder of src that is not here has no place in the house yet. */
export const ROOMS: readonly Room[] = [
  coreRoom('base', 'results, events, numbers; knows nothing of keyboards', []),
  coreRoom('keymap', 'the document: shape, reading, writing, edits', ['base']),
  coreRoom('board', 'geometry', MODEL),
  coreRoom('host', 'key codes and what the computer makes of them', MODEL),
  coreRoom('engine', 'what presses do', [...MODEL, 'host']),
  coreRoom('routes', 'how a need is typed', GROUND),
  coreRoom('needs', 'need lists', [...MODEL, 'host']),
  coreRoom('typist', 'the typist model', MIDDLE),
  coreRoom('findings', 'the rules', [...MIDDLE, 'typist']),
  coreRoom('coverage', 'what a need list costs', [...MIDDLE, 'typist']),
  coreRoom('rehearse', 'streams of presses: written, recorded, replayed, compared; slips', JUDGING),
  coreRoom('versions', 'comparing designs', JUDGING),
  coreRoom('link', 'the design in an address', JUDGING),
  coreRoom('drawing', 'sheet and worksheet as text and SVG', JUDGING),
  coreRoom('effort', 'what a text costs', SHOWING),
  coreRoom('arrange', 'letting the computer place symbols', [...SHOWING, 'effort']),
  coreRoom('practice', 'drills and forecast', [...SHOWING, 'effort', 'arrange']),
  coreRoom('check', 'diagnosis of a real board', [...SHOWING, 'effort', 'arrange', 'practice']),
  {
    room: 'workers',
    holds: 'thin: a message in, a core function, progress and result out',
    mayImport: ALL_CORE.map((name) => `core/${name}`),
    packages: ['comlink'],
    instead:
      'A worker only wraps a core function: put the work into core, and the wish for it into the store.',
  },
  {
    room: 'store',
    holds: 'the open design, history, selection, keeping',
    mayImport: ['core/*', 'workers', 'demo-layouts'],
    packages: ['zustand', 'immer', 'comlink', 'idb-keyval', 'react'],
    instead: 'The store knows no face: let the component read the store, or put the logic into core.',
  },
  {
    room: 'ui/widgets',
    holds: 'buttons, popovers, sliders, charts; no idea of a keyboard',
    mayImport: [],
    packages: null,
    instead: 'A widget knows nothing of keyboards: hand it what it shows as props.',
  },
  {
    room: 'ui/board',
    holds: 'the SVG board, camera, gestures',
    mayImport: ['core/*', 'store', 'ui/widgets'],
    packages: null,
    instead: 'The board serves every desk: hand in what one desk wants of it as props.',
  },
  {
    room: 'ui/desks',
    holds: 'one folder a desk, never one another',
    mayImport: ['core/*', 'store', 'ui/widgets', 'ui/board'],
    packages: null,
    instead:
      'What two desks share goes to the store, the board or the widgets; composing desks is the business of ui/app.',
  },
  {
    room: 'ui/app',
    holds: 'composition, shortcuts, routing between desks',
    mayImport: ['core/*', 'store', 'ui/*', 'demo-layouts'],
    packages: null,
    instead: 'The app composes the face; work that needs a worker is asked of the store.',
  },
  {
    room: 'build',
    holds: 'writers of tables and schema, bootstrap, benchmark',
    mayImport: ['core/*'],
    packages: null,
    instead: 'Build scripts use core alone, and nobody imports them.',
  },
  {
    room: 'cli',
    holds: 'the command line',
    mayImport: ['core/*'],
    packages: [],
    instead: 'A command only reads files, calls core and words the answer: put the work into core.',
  },
];
