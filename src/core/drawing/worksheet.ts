import type { HostLayout } from '../host/host-layout.ts';
import { layerWords } from '../keymap/action-words.ts';
import { chordsOf, timingOf } from '../keymap/timing.ts';
import type { Host, Keymap, Layer } from '../keymap/types.ts';
import { csvText } from './csv.ts';
import { markdownTable, markdownText } from './markdown-text.ts';
import { timingText } from './timing-text.ts';
import { type WorksheetRow, worksheetRows } from './worksheet-rows.ts';

const SIDES = ['Tap', 'Tap, W3C code', 'Tap, HID usage', 'Hold', 'Hold, W3C code', 'Hold, HID usage'];
const CSV_HEADING = ['Part', 'Name', 'Layer', 'Key', 'Where', ...SIDES, 'Timing'];

const ABOUT_NUMBERS =
  'W3C codes are UI Events `code` values. HID usages are hexadecimal, page and id in one number ' +
  '(0x0700E1 is usage 0xE1 of page 0x07, USB HID Usage Tables).';

/** All that stands in a design, as Markdown, for entering it somewhere else by hand. `host` is the first host's layout. */
export function worksheetMarkdown(keymap: Keymap, host: HostLayout): string {
  const rows = worksheetRows(keymap, host);
  const sections = [
    `# ${markdownText(keymap.name)}`,
    ...paragraphs(keymap.notes ?? ''),
    facts(keymap),
    `${ABOUT_NUMBERS} Characters are typed as on the host layout ${hostName(host)}.`,
    ...keymap.layers.map((layer, at) => layerSection(keymap, layer, at, rows)),
    ...chordSection(keymap, rows),
  ];
  return `${sections.join('\n\n')}\n`;
}

/** The same lines as CSV (RFC 4180), one table: keys layer by layer, then chords, then hosts and timing. */
export function worksheetCsv(keymap: Keymap, host: HostLayout): string {
  const lines = worksheetRows(keymap, host).map((row) => [
    row.part,
    row.name,
    row.layer,
    row.keys,
    row.where,
    ...sideCells(row),
    row.timing,
  ]);
  const settings = [
    ...keymap.layers.flatMap((layer) =>
      onWhileText(keymap, layer).map((text) => ['layer', layer.name, text]),
    ),
    ...keymap.hosts.map((each) => ['host', hostText(each)]),
    [
      'timing',
      'unless a key says otherwise',
      '',
      '',
      '',
      '',
      '',
      '',
      '',
      '',
      '',
      timingText(timingOf(keymap)),
    ],
  ];
  const filled = settings.map((cells) => CSV_HEADING.map((_, at) => cells[at] ?? ''));
  return csvText([CSV_HEADING, ...lines, ...filled]);
}

function paragraphs(notes: string): readonly string[] {
  const parts = notes.split(/\r?\n\s*\r?\n/).map((part) => part.trim());
  return parts.filter((part) => part !== '').map(markdownText);
}

function sideCells({ tap, hold }: WorksheetRow): string[] {
  return [tap.words, tap.codes, tap.usages, hold.words, hold.codes, hold.usages];
}

function facts(keymap: Keymap): string {
  const hosts = keymap.hosts.map(hostText).join('; ');
  return markdownTable(
    ['What', 'Value'],
    [
      ['Board', `${keymap.board.name}, ${keymap.board.keys.length} keys`],
      [keymap.hosts.length === 1 ? 'Host' : 'Hosts, the first types the characters', hosts],
      ['Timing unless a key says otherwise', timingText(timingOf(keymap))],
      ['Layers, lowest first', keymap.layers.map((layer) => layer.name).join(', ')],
    ],
  );
}

function layerSection(keymap: Keymap, layer: Layer, at: number, rows: readonly WorksheetRow[]): string {
  const keys = keymap.board.keys.length;
  const own = rows.slice(at * keys, (at + 1) * keys);
  const table = markdownTable(
    ['Key', 'Where', ...SIDES, 'Timing'],
    own.map((row) => [row.keys, row.where, ...sideCells(row), row.timing]),
  );
  const heading = `## Layer ${at + 1}: ${markdownText(layer.name)}`;
  return [heading, ...onWhileText(keymap, layer).map(markdownText), table].join('\n\n');
}

function onWhileText(keymap: Keymap, layer: Layer): readonly string[] {
  if (layer.onWhile === undefined) return [];
  return [`On while these are on: ${layer.onWhile.map((id) => layerWords(keymap, id)).join(', ')}.`];
}

function chordSection(keymap: Keymap, rows: readonly WorksheetRow[]): readonly string[] {
  if (chordsOf(keymap).length === 0) return [];
  const table = markdownTable(
    ['Name', 'Keys', 'Where', 'Layers', 'Gives', 'W3C code', 'HID usage', 'Timing'],
    rows
      .filter((row) => row.part === 'chord')
      .map((row) => [
        row.name,
        row.keys,
        row.where,
        row.layer,
        row.tap.words,
        row.tap.codes,
        row.tap.usages,
        row.timing,
      ]),
  );
  return [`## Chords\n\n${table}`];
}

function hostName(host: HostLayout): string {
  return markdownText(host.variant === '' ? host.layout : `${host.layout} ${host.variant}`);
}

function hostText({ system, layout, variant, corrections = [] }: Host): string {
  const name = `${system}, ${variant === '' ? layout : `${layout} ${variant}`}`;
  if (corrections.length === 0) return name;
  const words = corrections.map(({ code, level, gives }) => `${code} ${level} gives ${gives || 'nothing'}`);
  return `${name}, corrected: ${words.join(', ')}`;
}
