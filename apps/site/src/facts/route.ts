/**
 * A route between two modes as scales on one root. Pure, so that a page and its island say the same.
 */
import { type Mode, type MovedDegree, type Root, routeBetween, type Scale, spell } from '@stillroot/core';

/** A scale on the way, and the one note that moved to reach it (none for the first). */
export interface RouteStop {
  readonly scale: Scale;
  readonly moved: MovedDegree | undefined;
}

/** More than the moved degrees of all modes on a route together. */
const KNOWN = 100;

/**
 * The scales from one mode to another, one note and one semitone at a time: of the shortest ways the one
 * through the best known modes, and of those the one that keeps nearest to the church modes.
 * @param preference how well known a mode is, a whole number
 */
export function scalesOnRoute(
  from: Mode,
  to: Mode,
  root: Root,
  preference: (mode: Mode) => number,
): readonly RouteStop[] {
  const welcome = (mode: Mode): number => preference(mode) * KNOWN - mode.base.moved.length;
  return routeBetween(from, to, welcome).map(({ mode, moved }) => ({ scale: spell(mode, root), moved }));
}
