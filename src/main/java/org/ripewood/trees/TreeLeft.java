package org.ripewood.trees;

import java.time.LocalDate;
import org.ripewood.platform.Actor;

/**
 * Told within the transaction in which a tree leaves the school, to rooms that know more of it.
 *
 * @param by whoever said so
 */
public record TreeLeft(Actor by, long treeId, LocalDate leftOn) {}
