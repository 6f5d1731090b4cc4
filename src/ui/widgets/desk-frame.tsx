import { type ReactNode, useId, useState } from 'react';
import { Badge } from './badge.tsx';
import styles from './desk-frame.module.css';
import { useMedia } from './use-media.ts';

/** The places of a desk: what stands left and right of its main part. The labels name the sides for everybody. */
export interface DeskFrameProps {
  readonly left: ReactNode;
  readonly main: ReactNode;
  readonly right: ReactNode;
  readonly leftLabel: string;
  readonly rightLabel: string;
  /** What a closed side still shows, for instance how many findings there are. */
  readonly leftBadge?: ReactNode;
  readonly rightBadge?: ReactNode;
  /** The main part takes more of a phone's height than a board needs. */
  readonly isTall?: boolean;
  /** Nothing is typed at the moment: on a phone the main part is as high as what it holds and scrolls away with the page. */
  readonly isAtRest?: boolean;
}

type Side = 'left' | 'right';

/** Below this width the sides are drawers, of which one is open at a time. */
const DRAWERS = '(max-width: 1099px)';
/** Below this width the main part is on top and the sides are sections under it. */
const SECTIONS = '(max-width: 639px)';

/**
 * The layout that all desks share. The three parts are never taken out of the page, so a desk keeps its state
 * (and a drag its source) while the window changes its width; on a narrow page the main part also comes first
 * in reading order.
 */
export function DeskFrame(props: DeskFrameProps) {
  const drawers = useMedia(DRAWERS);
  const sections = useMedia(SECTIONS);
  const [open, setOpen] = useState<Readonly<Record<Side, boolean>>>({ left: sections, right: false });
  const toggle = (side: Side) => {
    const alone = drawers && !sections ? { left: false, right: false } : open;
    setOpen({ ...alone, [side]: !open[side] });
  };
  const side = (which: Side, label: string, badge: ReactNode, content: ReactNode) => (
    <SidePart
      key={which}
      which={which}
      label={label}
      badge={badge}
      open={open[which] || !drawers}
      onToggle={() => toggle(which)}
    >
      {content}
    </SidePart>
  );
  const left = side('left', props.leftLabel, props.leftBadge, props.left);
  const right = side('right', props.rightLabel, props.rightBadge, props.right);
  const main = (
    <main
      key="main"
      className={styles.main}
      data-tall={props.isTall === true}
      data-rest={props.isAtRest === true}
    >
      {props.main}
    </main>
  );
  return <div className={styles.frame}>{sections ? [main, left, right] : [left, main, right]}</div>;
}

interface SidePartProps {
  readonly which: Side;
  readonly label: string;
  readonly badge: ReactNode;
  readonly open: boolean;
  readonly onToggle: () => void;
  readonly children: ReactNode;
}

function SidePart({ which, label, badge, open, onToggle, children }: SidePartProps) {
  const content = useId();
  return (
    <section className={styles.side} data-side={which} data-open={open} aria-label={label}>
      <button
        type="button"
        className={styles.handle}
        aria-expanded={open}
        aria-controls={content}
        onClick={onToggle}
      >
        <span className={styles.mark} aria-hidden="true" />
        <span>{label}</span>
        {badge !== undefined && badge !== null && <Badge>{badge}</Badge>}
      </button>
      <div id={content} className={styles.content}>
        {children}
      </div>
    </section>
  );
}
