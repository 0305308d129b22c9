/** How the slab lies on the screen: the front at the foot, room round it for sizes. */

/** @typedef {{wide: number, high: number, scale: number, box: Box, at: (point: XY) => XY, from: (point: XY) => XY}} Frame
 * `at` leads from mm to the screen's units, `from` back */

const LEFT = 40;
const RIGHT = 24;
const TOP = 30;
const FOOT = 40;
const HIGHEST = 340;

/**
 * @param {Box} box of the slab, in mm
 * @param {number} wide of the screen's place
 * @returns {Frame}
 */
export function frameFor(box, wide) {
  const [length, width] = [Math.max(1, box.to.x - box.from.x), Math.max(1, box.to.y - box.from.y)];
  const scale = Math.min((wide - LEFT - RIGHT) / length, HIGHEST / width);
  const left = LEFT + (wide - LEFT - RIGHT - length * scale) / 2;
  const foot = TOP + width * scale;
  return {
    wide,
    high: foot + FOOT,
    scale,
    box,
    at: ({ x, y }) => ({ x: left + (x - box.from.x) * scale, y: foot - (y - box.from.y) * scale }),
    from: ({ x, y }) => ({ x: box.from.x + (x - left) / scale, y: box.from.y + (foot - y) / scale }),
  };
}
