import { useEffect, useState } from 'react';
import { loadOfferedLanguages } from '../../../../store/need-lists.ts';
import { CheckList } from '../../../widgets/check-list.tsx';
import { SearchField } from '../../../widgets/text-field.tsx';
import { findLanguages, type Language, namedLanguages } from './languages.ts';

/** How many languages are in view at once. */
const SHOWN = 10;

/** The lists of about a hundred languages, found by their English or their own name; the chosen ones are always in view. */
export function LanguageSearch({
  lists,
  onToggle,
}: {
  /** Names of the lists that are chosen, of languages or not. */
  readonly lists: readonly string[];
  readonly onToggle: (list: string) => void;
}) {
  const [languages, setLanguages] = useState<readonly Language[]>([]);
  const [query, setQuery] = useState('');
  useEffect(() => {
    void loadOfferedLanguages().then((offered) => setLanguages(namedLanguages(offered)));
  }, []);
  const chosen = languages.filter(({ list }) => lists.includes(list));
  const found = findLanguages(languages, query, SHOWN).filter(({ list }) => !lists.includes(list));
  const shown = [...chosen, ...found];
  const values = chosen.map(({ list }) => list);
  return (
    <>
      <SearchField
        label="Search languages"
        placeholder="Search languages: Polish, polski, pl"
        value={query}
        onChange={setQuery}
      />
      {shown.length > 0 && (
        <CheckList
          label="Languages (Unicode CLDR)"
          values={values}
          options={shown.map(({ list, title, ownName, count }) => ({
            value: list,
            label: title,
            hint: ownName === null ? String(count) : `${ownName}, ${count}`,
          }))}
          onChange={(now) => {
            for (const list of shown.map((each) => each.list)) {
              if (now.includes(list) !== values.includes(list)) onToggle(list);
            }
          }}
        />
      )}
      {query !== '' && found.length === 0 && <p role="status">No other language goes by that name.</p>}
    </>
  );
}
