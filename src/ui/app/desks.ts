import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

/** A desk that the page can show. */
export interface Desk {
  readonly id: string;
  readonly title: string;
  readonly Desk: LazyExoticComponent<ComponentType>;
}

/** The desks there are, in the order of the work. The switch between them shows itself from two on. */
export const DESKS: readonly Desk[] = [
  {
    id: 'design',
    title: 'Design',
    Desk: lazy(async () => ({ default: (await import('../desks/design/design-desk.tsx')).DesignDesk })),
  },
  {
    id: 'rehearse',
    title: 'Rehearse',
    Desk: lazy(async () => ({ default: (await import('../desks/rehearse/rehearse-desk.tsx')).RehearseDesk })),
  },
  {
    id: 'practise',
    title: 'Practise',
    Desk: lazy(async () => ({ default: (await import('../desks/practise/practise-desk.tsx')).PractiseDesk })),
  },
  {
    id: 'check',
    title: 'Check',
    Desk: lazy(async () => ({ default: (await import('../desks/check/check-desk.tsx')).CheckDesk })),
  },
  {
    id: 'sheet',
    title: 'Sheet',
    Desk: lazy(async () => ({ default: (await import('../desks/sheet/sheet-desk.tsx')).SheetDesk })),
  },
];

/** The desk by that id, else the first. */
export function deskOf(id: string, desks: readonly Desk[] = DESKS): Desk | undefined {
  return desks.find((desk) => desk.id === id) ?? desks[0];
}
