/** What the command line can do, for `help` and after a mistake. */
export const USAGE = `usage: npm run -s handful -- COMMAND …

  check FILE [--needs NAME_OR_FILE]… [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--json] [--host LAYOUT]
      findings, and how each need is typed; without --needs the design's own needs, or ascii where it has none;
      with a text or a typist also what ordinary typing sets off
  route FILE NEED… [--json] [--host LAYOUT]
      how something is typed: a character, key:CODE or shortcut:Modifier+CODE
  play FILE EVENTS.json… [--json] [--host LAYOUT]
      what streams of presses [{ "t", "key", "type" }, …] come to; one line of JSON a stream with --json
  worksheet FILE [--as md|csv] [--host LAYOUT]
      every layer, key and chord with W3C codes and HID usages, for entering the design elsewhere by hand
  sheet FILE -o OUT.svg [--paper a4|letter] [--turn portrait|landscape] [--ink colour|black] [--host LAYOUT]
      the printable reference as self-contained SVG; further pages are OUT-2.svg and so on

  accidents FILE [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--simulate WORDS --seed N] [--json] [--host LAYOUT]
      how often ordinary typing sets chords and holds off, how often they fail when meant, how long letters wait
  suggest FILE --action ACTION [--keys 2-4] [--hands one|two|any] [--layers A,B] [--window MS]
      [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--json] [--host LAYOUT]
      chords for an action such as '{"do":"key","code":"Tab"}', the best first; on the base layer if none is named
  diff A B [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--json]
      what differs by key and layer, and what that does to needs, accidents and hands; code 1 where B types less than A

  FILE, A and B are neutral keymaps. A need list is a built-in name (ascii, editing, function-keys, media, modifiers, shortcuts,
  shortcuts-macos, posix, names of programming languages, cldr:xx for the language xx), or a file with one need a line
  or JSON { "name", "needs" }.
  A typist is a file that the page hands out under “My own figures”.
  A text is english, german, french, spanish, portuguese, polish, code, or a file of running text.
  LAYOUT is an XKB layout and variant, such as de or "us mac", instead of the design's first host.
  Exit codes: 0 all well, 1 something is broken or missing, 2 the input could not be read (the reason is on stderr).
  In CSV a cell that begins with = + - or @ has an apostrophe before it, so that no spreadsheet takes it for a formula.`;
