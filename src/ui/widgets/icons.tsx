import type { ReactNode } from 'react';

/** A line drawing of 16 by 16 px in the colour of the text; the button around it carries the name. */
function Icon({ children }: { readonly children: ReactNode }) {
  return (
    <svg
      width="16"
      height="16"
      viewBox="0 0 16 16"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
    >
      {children}
    </svg>
  );
}

export const UndoIcon = () => (
  <Icon>
    <path d="M6 3 2.5 6.5 6 10M2.5 6.5H10a3.5 3.5 0 0 1 0 7H7" />
  </Icon>
);

export const RedoIcon = () => (
  <Icon>
    <path d="m10 3 3.5 3.5L10 10m3.5-3.5H6a3.5 3.5 0 0 0 0 7h3" />
  </Icon>
);

export const CrossIcon = () => (
  <Icon>
    <path d="m3.5 3.5 9 9m0-9-9 9" />
  </Icon>
);

export const BackIcon = () => (
  <Icon>
    <path d="M7 3.5 2.5 8 7 12.5M2.5 8h11" />
  </Icon>
);
