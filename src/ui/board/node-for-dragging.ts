/**
 * Lets an element of the drawing be dragged or dropped on. dnd-kit's types ask for an HTML element, though it only
 * uses what SVG elements have as well: this is the one place where they are told so.
 */
export function nodeForDragging(
  setNodeRef: (element: HTMLElement | null) => void,
): (element: SVGElement | null) => void {
  return (element) => setNodeRef(element as unknown as HTMLElement | null);
}
