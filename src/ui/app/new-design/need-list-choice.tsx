import { useEffect, useState } from 'react';
import { NEED_LISTS } from '../../../core/needs/need-lists.ts';
import { loadOfferedLanguages, type OfferedLanguage } from '../../../store/need-lists.ts';
import { CheckList } from '../../widgets/check-list.tsx';
import { Select } from '../../widgets/select.tsx';

const BUILT_IN = NEED_LISTS.map(({ name, title, needs }) => ({
  value: name,
  label: title,
  hint: String(needs.length),
}));

/** The need lists of a new design: the built-in ones in view, and a hundred languages to add from a list. */
export function NeedListChoice({
  lists,
  onChange,
}: {
  readonly lists: readonly string[];
  readonly onChange: (lists: readonly string[]) => void;
}) {
  const [languages, setLanguages] = useState<readonly OfferedLanguage[]>([]);
  useEffect(() => {
    void loadOfferedLanguages().then(setLanguages);
  }, []);
  const isBuiltIn = (list: string) => BUILT_IN.some(({ value }) => value === list);
  const added = lists.filter((list) => !isBuiltIn(list));
  const titleOf = (list: string) => languages.find(({ name }) => name === list)?.title ?? list;
  const free = languages.filter(({ name }) => !lists.includes(name));
  return (
    <>
      <CheckList
        label="Lists of needs"
        values={lists}
        options={[...BUILT_IN, ...added.map((list) => ({ value: list, label: titleOf(list) }))]}
        onChange={onChange}
      />
      {languages.length > 0 && (
        <Select
          label="Add a language"
          value=""
          options={[
            { value: '', label: 'Choose a language…' },
            ...free.map(({ name, title }) => ({ value: name, label: title })),
          ]}
          onChange={(list) => {
            if (list !== '') onChange([...lists, list]);
          }}
        />
      )}
    </>
  );
}
