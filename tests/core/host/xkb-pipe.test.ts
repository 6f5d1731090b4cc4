import { describe, expect, test } from 'vitest';
import { composeTable, readComposeFile } from '../../../src/build/tables/compose-file.ts';
import { readXkbKeymap } from '../../../src/build/tables/xkb-keymap.ts';

const KEYMAP = `
xkb_keymap {
xkb_keycodes "(unnamed)" {
	<AC01>               = 38;
	<KPMU>               = 63;
};
xkb_types "(unnamed)" {
	type "ALPHABETIC" {
		modifiers= Shift+Lock;
		map[Shift]= 2;
		map[Lock]= 2;
		level_name[1]= "Base";
	};
	type "FOUR_LEVEL_SEMIALPHABETIC" {
		modifiers= Shift+Lock+LevelThree;
		map[Lock+LevelThree]= 3;
		preserve[Lock+LevelThree]= Lock;
	};
};
xkb_symbols "(unnamed)" {
	name[Group1]="Made up";
	key <AC01>               {	[               a,               A ] };
	key <KPMU>               {
		type= "CTRL+ALT",
		symbols[Group1]= [     KP_Multiply,     XF86ClearGrab ]
	};
};
`;

describe('reading what xkbcli compile-keymap prints', () => {
  const keymap = readXkbKeymap(KEYMAP);

  test('the title, and keys by their evdev code in the short and the long form', () => {
    expect(keymap.title).toBe('Made up');
    expect(keymap.keys.get(30)).toEqual({ type: undefined, symbols: ['a', 'A'] });
    expect(keymap.keys.get(55)).toEqual({ type: 'CTRL+ALT', symbols: ['KP_Multiply', 'XF86ClearGrab'] });
  });

  test('types with their rows and what these leave to others', () => {
    const row = { mods: new Set(['Lock', 'LevelThree']), level: 3, preserve: new Set(['Lock']) };
    expect(keymap.types.get('FOUR_LEVEL_SEMIALPHABETIC')?.rows).toEqual([row]);
    expect(keymap.types.get('ALPHABETIC')?.rows.map(({ level }) => level)).toEqual([2, 2]);
  });

  test.each(['', 'xkb_keymap {};', KEYMAP.replace('name[Group1]', 'name')])(
    'refuses what is no keymap',
    (text) => {
      expect(() => readXkbKeymap(text)).toThrow('printed no keymap');
    },
  );

  test('refuses a key without a code', () => {
    expect(() => readXkbKeymap(KEYMAP.replace('<AC01>               = 38;', ''))).toThrow('<AC01>');
  });
});

describe('reading a Compose file', () => {
  const lines = [
    '# a comment',
    '<dead_acute> <e>\t: "é"\teacute # LATIN SMALL LETTER E WITH ACUTE',
    '<dead_acute> <space> : "\'" apostrophe',
    '<dead_diaeresis> <space> : "\\"" quotedbl',
    '<dead_acute> <dead_diaeresis> <space> : "΅"',
    '<dead_iota> <dead_acute> <dead_psili> <a> : "x"',
    '<Multi_key> <o> <o> : "°" degree',
    '<dead_grave> <e> : "è"',
  ];
  const sequences = readComposeFile(lines.join('\n'));
  const named: Readonly<Record<string, string>> = { space: ' ' };
  const names = { outputOf: (name: string) => named[name] ?? name };

  test('takes the sequences that begin with a dead key, quotes and all', () => {
    expect(sequences.map(({ result }) => result)).toEqual(['é', "'", '"', '΅', 'x', 'è']);
    expect(sequences[2]?.names).toEqual(['dead_diaeresis', 'space']);
  });

  test('a layout gets the sequences of two and three strokes that it can press and that Unicode does not give anyway', () => {
    const outputs = new Set(['dead_acute', 'dead_diaeresis', 'e', ' ']);
    expect(composeTable(sequences, outputs, names)).toEqual({
      dead_acute: { ' ': "'" },
      dead_diaeresis: { ' ': '"' },
      'dead_acute dead_diaeresis': { ' ': '΅' },
    });
  });

  test('a later line overrides an earlier one', () => {
    const twice = readComposeFile('<dead_acute> <j> : "x"\n<dead_acute> <j> : "y"');
    expect(composeTable(twice, new Set(['dead_acute', 'j']), names)).toEqual({ dead_acute: { j: 'y' } });
  });
});
