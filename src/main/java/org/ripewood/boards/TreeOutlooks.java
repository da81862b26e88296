package org.ripewood.boards;

import org.ripewood.core.progress.Openings;
import org.ripewood.trees.Tree;

/** A tree and when each technique could be done on it; for one thread, as {@link Openings} are. */
public record TreeOutlooks(Tree tree, Openings openings) {}
