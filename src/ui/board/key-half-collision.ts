import { type CollisionDetection, pointerWithin } from '@dnd-kit/core';
import { dropId, targetOf } from './drop-id.ts';

/**
 * Finds the half of a key that lies under the pointer as it is drawn, turned keys included; the upright boxes that
 * dnd-kit measures overlap there. Off the keys, whatever else lies under the pointer.
 */
export const keyHalfCollision: CollisionDetection = (args) => {
  const at = args.pointerCoordinates;
  if (at === null) return pointerWithin(args);
  for (const element of document.elementsFromPoint(at.x, at.y)) {
    const target = targetOf(element);
    if (target === null) continue;
    const id = dropId(target);
    const container = args.droppableContainers.find((each) => each.id === id);
    if (container !== undefined) return [{ id, data: { droppableContainer: container, value: 0 } }];
  }
  return pointerWithin(args);
};
