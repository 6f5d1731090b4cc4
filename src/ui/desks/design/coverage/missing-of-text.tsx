import type { ListCoverage } from '../../../../core/coverage/coverage.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { addOwnNeeds } from '../needs/needs-edits.ts';
import { TEXT_LIST } from './coverage-report.ts';
import { plain } from './coverage-words.ts';

/** Lets the design ask for what it lacks of the own text, so that it stands among its needs and findings. */
export function MissingOfText({ lists }: { readonly lists: readonly ListCoverage[] }) {
  const asked = useBench((bench) => bench.keymap.needs?.own);
  const edit = useBench((bench) => bench.edit);
  const missing = lists.find(({ name }) => name === TEXT_LIST)?.missingNeeds ?? [];
  const unasked = missing.filter((need) => asked?.includes(need) !== true);
  if (unasked.length === 0) return null;
  return (
    <p>
      <Button onClick={() => edit(addOwnNeeds(useBench.getState().keymap, unasked))}>
        Ask for the {plain(unasked.length)} missing of your text
      </Button>
    </p>
  );
}
