import { create } from 'zustand';

/** What of the page is in view, so that a command given anywhere can bring it up. */
interface PageState {
  /** The desk that is open, by its id. */
  readonly desk: string;
  /** The dialog of a desk that is open, by its name; null for none. */
  readonly dialog: string | null;
  /** Which of several views stands in a place, by the place's name. */
  readonly views: Readonly<Record<string, string>>;
  showDesk(desk: string): void;
  showDialog(dialog: string | null): void;
  showView(place: string, view: string): void;
}

/** What is in view; nothing of it is kept. */
export const usePage = create<PageState>()((set) => ({
  desk: 'design',
  dialog: null,
  views: {},
  showDesk: (desk) => set({ desk, dialog: null }),
  showDialog: (dialog) => set({ dialog }),
  showView: (place, view) => set(({ views }) => ({ views: { ...views, [place]: view } })),
}));

/** A dialog that its desk shows and any command may open by this name. One is open at a time. */
export function usePageDialog(name: string) {
  const isOpen = usePage(({ dialog }) => dialog === name);
  const { showDialog } = usePage.getState();
  return { isOpen, open: () => showDialog(name), close: () => showDialog(null) };
}

/** Which view stands in a place, and the way to another; any command may choose one as well. */
export function usePageView<View extends string>(
  place: string,
  views: readonly View[],
  first: View,
): readonly [View, (view: View) => void] {
  const wanted = usePage((page) => page.views[place]);
  const shown = views.find((view) => view === wanted) ?? first;
  return [shown, (view) => usePage.getState().showView(place, view)];
}
